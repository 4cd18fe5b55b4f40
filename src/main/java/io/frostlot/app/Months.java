package io.frostlot.app;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The planning days month by month, as one sees them who orders once a month. */
final class Months {
  private Months() {}

  /**
   * A month.
   *
   * @param firsts the first slot of each supplier by order date, at least one
   * @param end the last day before the next month's order can be relied on, whomever it is from
   * @param next day of the next month's order, or the day after the planning days
   */
  record Month(List<Slot> firsts, LocalDate end, LocalDate next) {
    Month {
      firsts = List.copyOf(firsts);
    }
  }

  /**
   * Months in which one can order, the first of them from the first planning day on.
   *
   * @param regular ids of the suppliers ordered from
   */
  static List<Month> of(World world, Set<String> regular) {
    Map<YearMonth, Map<String, Slot>> firsts = new TreeMap<>();
    world.slots().stream()
        .filter(slot -> regular.contains(slot.supplier()))
        .sorted(Comparator.comparing(Slot::ordered).thenComparing(Comparator.naturalOrder()))
        .forEach(
            slot ->
                firsts
                    .computeIfAbsent(YearMonth.from(slot.ordered()), month -> new TreeMap<>())
                    .putIfAbsent(slot.supplier(), slot));
    List<List<Slot>> inOrder =
        firsts.values().stream().map(bySupplier -> List.copyOf(bySupplier.values())).toList();
    LocalDate last = world.scenario().planning().to();
    List<Month> months = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      List<Slot> next = i + 1 < inOrder.size() ? inOrder.get(i + 1) : List.of();
      months.add(
          new Month(
              inOrder.get(i),
              next.stream()
                  .map(slot -> slot.arrivesLatest().minusDays(1))
                  .max(Comparator.naturalOrder())
                  .orElse(last),
              next.stream()
                  .map(Slot::ordered)
                  .min(Comparator.naturalOrder())
                  .orElse(last.plusDays(1))));
    }
    return months;
  }
}
