package io.frostlot.plan;

import io.frostlot.forecast.Option;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A plan for the handmade room, made by hand too (and not a good one) so that everything that can
 * be shown of a plan occurs once: a must-meal and a need that are not met, a late meal, a sale,
 * boxes, a tentative order, every reason for a leftover, and pieces thrown away.
 */
public final class HandmadePlan {
  private HandmadePlan() {}

  private static Slot slot(World world, String supplier, String ordered) {
    return world.slots().stream()
        .filter(s -> s.supplier().equals(supplier) && s.ordered().equals(LocalDate.parse(ordered)))
        .findFirst()
        .orElseThrow();
  }

  private static Slot first(World world) {
    return slot(world, "hillside", "2031-01-12");
  }

  private static Slot second(World world) {
    return slot(world, "corner", "2031-02-10");
  }

  public static Plan plan(World world) {
    Slot first = first(world);
    Slot second = second(world);
    Order boxed =
        new Order(
            first,
            List.of(
                new Order.Line(HandmadeRoom.ADULTS, 1, new TreeMap<>()),
                new Order.Line(HandmadeRoom.HOPPERS, 2, new TreeMap<>(Map.of("winter", 2)))),
            Set.of("winter"),
            new Order.Boxes(
                2,
                List.of(
                    List.of(
                        new Order.Content(HandmadeRoom.ADULTS, 1),
                        new Order.Content(HandmadeRoom.HOPPERS, 1)),
                    List.of(new Order.Content(HandmadeRoom.HOPPERS, 1)))));
    Order fetched =
        new Order(
            second,
            List.of(new Order.Line(HandmadeRoom.SINGLE, 2, new TreeMap<>())),
            Set.of(),
            Order.Boxes.NONE);
    LocalDate inHand = LocalDate.parse("2030-12-01");
    List<Lot> lots =
        List.of(
            new Lot(
                "A1",
                HandmadeRoom.ADULT,
                18,
                "Kitchen",
                inHand,
                inHand,
                LocalDate.parse("2031-03-01"),
                new Lot.InHand("A1")),
            new Lot(
                "P1",
                HandmadeRoom.HOPPER,
                4,
                "Chest",
                HandmadeRoom.FIRST.plusDays(7),
                HandmadeRoom.FIRST.plusDays(8),
                HandmadeRoom.FIRST.plusDays(7 + 181),
                new Lot.UnderWay("P1")),
            lot("O1", HandmadeRoom.ADULT, 25, first, 182),
            lot("O2", HandmadeRoom.HOPPER, 50, first, 182),
            lot("O3", HandmadeRoom.SHOP_MOUSE, 2, second, 182));
    return new Plan(
        List.of(boxed, fetched),
        lots,
        feedings(),
        List.of(new Discard("A1", LocalDate.parse("2031-01-13"), 1)));
  }

  private static Lot lot(String id, Item item, int pieces, Slot slot, int life) {
    return new Lot(
        id,
        item,
        pieces,
        "Chest",
        slot.arrivesEarliest(),
        slot.arrivesLatest(),
        slot.arrivesEarliest().plusDays(life - 1L),
        new Lot.Ordered(slot));
  }

  private static List<Feeding> feedings() {
    List<Feeding> feedings = new ArrayList<>();
    feedings.add(feeding("Amber 2031-01-10", "2031-01-11", HandmadeRoom.ADULT, "A1"));
    List.of("01-17", "01-24", "01-31", "02-07", "02-14", "02-21", "02-28")
        .forEach(
            day ->
                feedings.add(
                    feeding("Amber 2031-" + day, "2031-" + day, HandmadeRoom.ADULT, "A1")));
    List.of("01-16", "01-23", "01-30")
        .forEach(
            day ->
                feedings.add(
                    feeding("Bark 2031-" + day, "2031-" + day, HandmadeRoom.HOPPER, "O2")));
    List.of("02-06", "02-13", "02-20", "02-27")
        .forEach(
            day ->
                feedings.add(feeding("Bark 2031-" + day, "2031-" + day, HandmadeRoom.ADULT, "A1")));
    List.of("03-07", "03-14", "03-21", "03-28")
        .forEach(
            day ->
                feedings.add(
                    feeding("Amber 2031-" + day, "2031-" + day, HandmadeRoom.ADULT, "O1")));
    List.of("03-06", "03-13", "03-20")
        .forEach(
            day ->
                feedings.add(feeding("Bark 2031-" + day, "2031-" + day, HandmadeRoom.ADULT, "O1")));
    feedings.sort(java.util.Comparator.comparing(Feeding::day));
    return feedings;
  }

  private static Feeding feeding(String meal, String day, Item item, String lot) {
    return new Feeding(
        meal, LocalDate.parse(day), new Option(item, 1), 1, List.of(new Feeding.Draw(lot, 1)));
  }

  /**
   * The bill, by hand: hoppers 14.25 less 10 % are 12.83 a pack; goods 20.50 + 25.66 = 46.16; two
   * boxes 29 + 10 and 2 x 2 packing; tax 7 % of 89.16 is 6.24; 95.40 in all. Two single mice are
   * 4.40. The last tail meal is bought at 20.50 / 25 = 0.82.
   */
  public static Books books(World world) {
    Books books = new Books();
    Slot first = first(world);
    Slot second = second(world);
    books.ledger(first).addGoods(Money.of("20.50"), false);
    books.ledger(first).addGoods(Money.of("25.66"), true);
    books.ledger(first).addCharge(OrderTerms.Charge.SHIPPING, Money.of(39));
    books.ledger(first).addCharge(OrderTerms.Charge.PACKING, Money.of(4));
    books.ledger(first).addTax(Money.of("6.24"));
    books.ledger(second).addGoods(Money.of("4.40"), false);
    books.cash("pack-price", first, Money.of("46.16"));
    books.cash("shipping", first, Money.of(43));
    books.cash("tax", first, Money.of("6.24"));
    books.cash("pack-price", second, Money.of("4.40"));
    books.reckoned("holding", Money.of("2.345"));
    books.reckoned("late-meals", Money.of("0.25"));
    books.tail("tail", Money.of("0.82"));
    books.unmet(5, true);
    books.use("freezer-space", "Chest on 2031-01-15", 2.28, 3);
    return books;
  }

  public static Answer.Judged judged(World world) {
    return new Answer.Judged(plan(world), books(world));
  }
}
