package io.frostlot.report;

import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Habit;
import io.frostlot.plan.Interval;

/** The plan beside habits solved under the same rules; money only where the meals are the same. */
record OtherHabits(Comparison comparison) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    if (comparison.habits().isEmpty() && comparison.unfinished().isEmpty()) {
      return;
    }
    page.heading("Compared with habits");
    page.say(
        "Each under the same rules, as well as a part of the time allows."
            + (report.world().dueSoon().isNone()
                ? ""
                : " What is reckoned for changing orders due soon is left out on both sides."));
    comparison
        .habits()
        .forEach(habit -> page.point(habit.says() + ": " + verdict(report, habit) + "."));
    if (!comparison.unfinished().isEmpty()) {
      page.point("not worked out: " + String.join("; ", comparison.unfinished()) + ".");
    }
  }

  private static String verdict(PlanReport report, Habit habit) {
    Difference.Side shown = Difference.Side.of(report.answer().plan(), report.outcome());
    if (!habit.side().sameMeals(shown)) {
      return "%s, where this plan has %s; so their money is not compared"
          .formatted(Differences.state(habit.side()), Differences.state(shown));
    }
    return money(report, habit.dearerBy());
  }

  /** What is said of a difference: "cannot tell" where zero lies inside. */
  private static String money(PlanReport report, Interval dearer) {
    Wording wording = report.wording();
    double most = dearer.most().orElseThrow();
    double least = dearer.least().orElse(Double.NEGATIVE_INFINITY);
    if (wording.isNothing(most)) {
      return wording.isNothing(least)
          ? "costs the same"
          : "the plan found for it costs the same" + perhapsLess(wording, least);
    }
    if (most < 0) {
      return "costs %s less: a better plan than this one, which more time (--seconds) should find"
          .formatted(wording.atLeast(-most));
    }
    if (wording.isNothing(least)) {
      return "costs at most %s more, and never less".formatted(wording.atMost(most));
    }
    return least > 0
        ? "costs " + range(wording.atLeast(least), wording.atMost(most)) + " more"
        : "cannot tell which costs less: the plan found for it costs %s more%s"
            .formatted(wording.atMost(most), perhapsLess(wording, least));
  }

  private static String perhapsLess(Wording wording, double least) {
    return Double.isInfinite(least)
        ? ", how little it could cost is not known"
        : ", its best perhaps up to %s less".formatted(wording.atMost(-least));
  }

  private static String range(String least, String most) {
    return least.equals(most) ? least : least + " to " + most;
  }
}
