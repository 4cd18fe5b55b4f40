package io.frostlot.report;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What to thaw for whom in the next days, and from which freezer. */
final class NextMeals implements Sections.Section {
  private static final int DAYS = 7;

  @Override
  public void write(PlanReport report, Page page) {
    LocalDate first = report.world().scenario().planning().from();
    LocalDate last = first.plusDays(DAYS - 1);
    Map<String, Demand> demands = report.world().demandsById();
    List<Feeding> next =
        report.plan().feedings().stream()
            .filter(feeding -> !feeding.day().isAfter(last))
            .sorted(
                Comparator.comparing(Feeding::day)
                    .thenComparing(feeding -> eater(feeding, demands))
                    .thenComparing(Feeding::mealId))
            .toList();
    if (next.isEmpty()) {
      return;
    }
    page.heading("Meals of the next " + DAYS + " days");
    Map<String, Lot> lots = report.plan().lotsById();
    Table table = Table.of("", "for", ">", "of", ">each", "from", "use by").grouped();
    for (Feeding feeding : next) {
      table.row(
          Wording.day(feeding.day()),
          eater(feeding, demands),
          feeding.pieces() + " x",
          feeding.option().item().name(),
          feeding.option().item().grams().mean().toString(),
          from(feeding, lots, Lot::freezer),
          from(feeding, lots, lot -> Wording.date(lot.useBy())));
    }
    page.table(table);
    page.say(
        "Thaw no more than is fed, and freeze none of it again. An animal that refuses, sheds or"
            + " does not look well is not fed for the plan's sake.");
  }

  private static String eater(Feeding feeding, Map<String, Demand> demands) {
    return demands.get(feeding.mealId()).meal().eater();
  }

  private static String from(Feeding feeding, Map<String, Lot> lots, Function<Lot, String> of) {
    return feeding.draws().stream()
        .map(draw -> of.apply(lots.get(draw.lotId())))
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
