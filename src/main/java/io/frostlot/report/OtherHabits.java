package io.frostlot.report;

import io.frostlot.plan.Habit;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Standing;
import java.util.ArrayList;
import java.util.List;

/** The plan beside habits solved under the same rules; money only where the meals are the same. */
record OtherHabits(List<Habit> habits) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    if (habits.isEmpty()) {
      return;
    }
    page.heading("Compared with habits");
    page.say("Each is planned under the same rules, in a part of the time.");
    habits.forEach(habit -> page.point(habit.says() + ": " + verdict(report, habit) + "."));
  }

  private static String verdict(PlanReport report, Habit habit) {
    Standing shown = report.answer().plan().standing();
    int late = report.outcome().late().stream().mapToInt(Outcome.Late::meals).sum();
    if (!habit.standing().sameBeforeMoney(shown) || habit.lateMeals() != late) {
      return "%s, where this plan has %s; so their money is not compared"
          .formatted(state(habit.standing(), habit.lateMeals()), state(shown, late));
    }
    Interval dearer = habit.dearerBy();
    if (report.wording().isNothing(dearer.least().orElse(-1))
        && report.wording().isNothing(dearer.most().orElse(1))) {
      return "costs the same";
    }
    if (dearer.holdsZero()) {
      return "cannot tell which costs less" + bothWays(report.wording(), dearer);
    }
    return dearer.least().orElse(-1) > 0
        ? "costs " + range(report.wording(), dearer) + " more"
        : "costs " + range(report.wording(), dearer.turned()) + " less";
  }

  private static String state(Standing standing, int late) {
    List<String> state = new ArrayList<>();
    add(state, standing.unmetMust(), "must-meal unmet", "must-meals unmet");
    add(state, standing.unmetOther(), "other meal unmet", "other meals unmet");
    if (standing.shortfall() > 0) {
      state.add("margins short by " + standing.shortfall());
    }
    add(state, late, "meal late", "meals late");
    return state.isEmpty() ? "every meal met on its best day" : String.join(", ", state);
  }

  private static void add(List<String> state, long count, String one, String many) {
    if (count > 0) {
      state.add(Wording.count(count, one, many));
    }
  }

  private static String range(Wording wording, Interval interval) {
    String least = wording.atLeast(interval.least().orElseThrow());
    if (interval.most().isEmpty()) {
      return "at least " + least;
    }
    String most = wording.atMost(interval.most().getAsDouble());
    return least.equals(most) ? least : least + " to " + most;
  }

  private static String bothWays(Wording wording, Interval interval) {
    return interval.least().isPresent() && interval.most().isPresent()
        ? " (between %s less and %s more)"
            .formatted(
                wording.atMost(-interval.least().getAsDouble()),
                wording.atMost(interval.most().getAsDouble()))
        : "";
  }
}
