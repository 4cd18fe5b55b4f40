package io.frostlot.report;

import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Shortfall;
import io.frostlot.units.Period;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** By how much rules gave way, and where most. */
final class GaveWay implements Sections.Section {
  private static final int MOST_PARTS = 4;
  private static final double LEAST = 0.1;

  @Override
  public void write(PlanReport report, Page page) {
    List<Shortfall> shortfalls = report.books().shortfalls();
    if (!shortfalls.isEmpty()) {
      page.heading("What gave way");
      shortfalls.forEach(it -> page.point(whole(report, it) + parts(report, it) + "."));
    }
  }

  private static String whole(PlanReport report, Shortfall shortfall) {
    String amount = Wording.amount(shortfall);
    return switch (shortfall.rule()) {
      case "adequacy" ->
          "Adequacy by "
              + amount
              + " of the programme, below or above the band, summed over any four meals in a row"
              + " (all where there are fewer) and any eight weeks of each animal"
              + onAverage(MealRuns.of(report.world()).size(), shortfall.amount());
      case "late-limits" -> "Limits on late meals by " + amount;
      case "kind-shares" ->
          "Shares of kinds by " + amount + ", summed over any eight weeks of each animal";
      case "seldom-changes" -> "Keeping to kind and size by " + amount;
      case "budget" -> "Budget by " + amount + ", summed over orders and months";
      case "safety-cover" -> "Days of cover by " + amount;
      case "second-freezer" ->
          "Food in a second freezer, for animals that must eat, by "
              + amount
              + ", summed over the nights looked at and the freezer that might fail";
      default -> "Safety margin by " + amount;
    };
  }

  /** How little of it is in each, as a rule; nothing where there are none. */
  private static String onAverage(int runs, long percent) {
    double each = (double) percent / Math.max(1, runs);
    String some = each < LEAST ? "less than " + LEAST : Wording.decimal(each);
    return runs == 0 ? "" : " (%d of these, %s percent each on average)".formatted(runs, some);
  }

  /** The largest parts. */
  private static String parts(PlanReport report, Shortfall shortfall) {
    List<Shortfall.Part> largest =
        shortfall.parts().stream()
            .sorted(Comparator.comparing(Shortfall.Part::amount).reversed())
            .limit(MOST_PARTS)
            .toList();
    int more = shortfall.parts().size() - largest.size();
    return largest.stream()
        .map(part -> part(name(report, shortfall.rule(), part.of()), part))
        .collect(Collectors.joining("; ", ": ", more > 0 ? " and " + more + " more" : ""));
  }

  private static String part(String name, Shortfall.Part part) {
    Period days = part.days();
    String when = Wording.fromTo(days.from(), days.to());
    String amount = Wording.decimal(part.amount().doubleValue());
    return name.isEmpty()
        ? "%s by %s".formatted(when, amount)
        : "%s by %s (%s)".formatted(name, amount, when);
  }

  /** What is called by an id in a plan has a name in a letter. */
  private static String name(PlanReport report, String rule, String of) {
    return switch (rule) {
      case "budget" -> of.isEmpty() ? of : report.names().supplier(of);
      case "safety-cover" -> report.names().of(report.world().items().get(of));
      default -> of;
    };
  }
}
