package io.frostlot.supply;

import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The possible deliveries of a supplier: every order date from the first planning day on whose
 * delivery has surely arrived by the last, on no day of which the keeper is away.
 */
public final class Slots {
  private static final Set<DayOfWeek> WEEKEND = Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

  private Slots() {}

  /**
   * Slots in canonical order.
   *
   * @param away periods in which nobody can receive or fetch
   */
  public static List<Slot> of(Supplier supplier, Period planning, List<Period> away) {
    return handOvers(supplier.delivery(), planning)
        .flatMap(ships -> toSlots(supplier, ships))
        .filter(slot -> !slot.ordered().isBefore(planning.from()))
        .filter(slot -> !slot.arrivesLatest().isAfter(planning.to()))
        .filter(
            slot ->
                away.stream()
                    .noneMatch(
                        period ->
                            period.overlaps(
                                new Period(slot.arrivesEarliest(), slot.arrivesLatest()))))
        .sorted()
        .distinct()
        .toList();
  }

  /** Days on which goods leave the supplier: ship dates, opening days, show dates. */
  private static Stream<LocalDate> handOvers(Delivery delivery, Period planning) {
    Stream<LocalDate> days = planning.from().datesUntil(planning.to().plusDays(1));
    if (delivery instanceof Delivery.Shipped shipped) {
      return days.filter(day -> shipped.shipWeekdays().contains(day.getDayOfWeek()))
          .filter(shipped.lead()::isOpen);
    }
    if (delivery instanceof Delivery.Shop shop) {
      return days.filter(day -> shop.openWeekdays().contains(day.getDayOfWeek()))
          .filter(shop.lead()::isOpen);
    }
    return ((Delivery.Show) delivery).dates().stream().filter(planning::contains);
  }

  private static Stream<Slot> toSlots(Supplier supplier, LocalDate ships) {
    Delivery delivery = supplier.delivery();
    Delivery.Lead lead = lead(delivery);
    Delivery.Transit transit =
        delivery instanceof Delivery.Shipped shipped
            ? shipped.transit()
            : new Delivery.Transit(0, 0);
    LocalDate orderBy = orderBy(ships, lead);
    List<Slot> slots = new ArrayList<>();
    for (int ahead = 0; ahead <= lead.bookAheadDays(); ahead++) {
      slots.add(
          new Slot(
              supplier.id(),
              orderBy.minusDays(ahead),
              ships,
              ships.plusDays(transit.earliestDays()),
              ships.plusDays(transit.latestDays())));
    }
    return slots.stream();
  }

  /** The last day on which one may order for a given ship date. */
  static LocalDate orderBy(LocalDate ships, Delivery.Lead lead) {
    LocalDate day = ships;
    int left = lead.days();
    while (left > 0) {
      day = day.minusDays(1);
      if (!lead.shopDays() || isShopDay(day, lead)) {
        left--;
      }
    }
    return day;
  }

  private static boolean isShopDay(LocalDate day, Delivery.Lead lead) {
    return !WEEKEND.contains(day.getDayOfWeek()) && lead.isOpen(day);
  }

  private static Delivery.Lead lead(Delivery delivery) {
    if (delivery instanceof Delivery.Shipped shipped) {
      return shipped.lead();
    }
    if (delivery instanceof Delivery.Shop shop) {
      return shop.lead();
    }
    return ((Delivery.Show) delivery).lead();
  }
}
