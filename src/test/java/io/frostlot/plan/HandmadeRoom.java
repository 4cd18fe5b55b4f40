package io.frostlot.plan;

import io.frostlot.forecast.Need;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A small invented room and a plan for it, made by hand (and not a good one) so that everything that
 * can be shown of a plan occurs once: a must-meal and a need that are not met, a late meal, a sale, a
 * box, a tentative order, every reason for a leftover, and pieces thrown away.
 */
public final class HandmadeRoom {
  public static final String DIGEST = "0123456789abcdef".repeat(4);
  public static final LocalDate FIRST = LocalDate.parse("2031-01-06");
  private static final Item ADULT = item("hillside", "Adult mouse", "adult", 17, 21, 26);
  private static final Item HOPPER = item("hillside", "Hopper", "hopper", 7, 10, 13);
  private static final Item SHOP_MOUSE = item("corner", "Mouse", "adult", 18, 22, 26);
  private static final Pack ADULTS = pack(ADULT, 25, "20.50");
  private static final Pack HOPPERS = pack(HOPPER, 25, "14.25");
  private static final Pack SINGLE = pack(SHOP_MOUSE, 1, "2.20");

  private HandmadeRoom() {}

  private static Item item(String supplier, String name, String word, int least, int mean, int most) {
    Item.Spread spread =
        new Item.Spread(Grams.of(least), Grams.of(mean), Grams.of(most), false);
    return new Item(supplier + "/" + name, name, "mouse", word, spread, Litres.ofPrey(Grams.of(mean)));
  }

  private static Pack pack(Item item, int pieces, String price) {
    return new Pack(
        item,
        pieces,
        Money.of(price),
        Pack.Availability.ANY,
        new Pack.Packed(item.grams().mean().times(pieces), item.litres().times(pieces)));
  }

  private static Supplier hillside() {
    Sale winter =
        new Sale(
            "winter",
            new Period(FIRST, FIRST.plusDays(20)),
            DateBasis.ORDER,
            Set.of("Hopper"),
            new Sale.PercentOff(Percent.of("10")),
            Sale.Limits.NONE,
            true);
    return new Supplier(
        "hillside",
        "Hillside Hatch (invented)",
        new Supplier.PriceSheet(
            LocalDate.parse("2030-12-01"), List.of(ADULTS, HOPPERS), List.of(), List.of(winter)),
        new OrderTerms(
            List.of(),
            OrderTerms.Threshold.NONE,
            List.of(),
            new OrderTerms.Tax(Percent.of("7"), true)),
        new Boxing(
            Boxing.Way.WHOLE_PACKS,
            new Boxing.Limits(Grams.of(1000), Litres.UNLIMITED, Pack.UNLIMITED),
            4),
        new Shipping(
            new Shipping.Rate(Money.ZERO, Money.of(29), Money.of(10)),
            new Shipping.Packing(Money.ZERO, Money.of(2)),
            List.of(),
            List.of()),
        new Delivery.Shipped(
            new Delivery.Lead(2, false, 0, List.of()),
            Set.of(DayOfWeek.TUESDAY),
            new Delivery.Transit(1, 2)));
  }

  private static Supplier corner() {
    return new Supplier(
        "corner",
        "Corner Shop (invented)",
        new Supplier.PriceSheet(
            LocalDate.parse("2030-12-01"), List.of(SINGLE), List.of(), List.of()),
        OrderTerms.PLAIN,
        Boxing.NONE,
        Shipping.NONE,
        new Delivery.Shop(new Delivery.Lead(0, false, 0, List.of()), Set.of(DayOfWeek.MONDAY)));
  }

  /** Adult mice once a week. */
  private static Animal amber() {
    MealSize.Tolerance tolerance = new MealSize.Tolerance(Percent.of("80"), Percent.of("125"));
    return new Animal(
        "Amber",
        new Curve.Constant(Grams.of(420)),
        FIRST,
        new Animal.Diet(Set.of("mouse"), Grams.of(30), 1),
        new Animal.Programme(
            new Schedule.Every(7, LocalDate.parse("2031-01-10")),
            new MealSize.ShareOfMass(Percent.of("5"), tolerance),
            Importance.MAY_SLIDE,
            new Animal.Leeway(0, 3)),
        List.of(),
        Period.ALWAYS);
  }

  /** Hoppers while it is under 100 g, until 1 February; adult mice from then on. */
  private static Animal bark() {
    MealSize byMass =
        new MealSize.ByMass(
            List.of(
                new MealSize.ByMass.Step(Grams.ZERO, Grams.of(7), Grams.of(13)),
                new MealSize.ByMass.Step(Grams.of(100), Grams.of(17), Grams.of(27))));
    return new Animal(
        "Bark",
        new Curve.Logistic(Grams.of(80), Grams.of(300), 0.012),
        FIRST,
        new Animal.Diet(Set.of("mouse"), Grams.of(30), 1),
        new Animal.Programme(
            new Schedule.Weekdays(Set.of(DayOfWeek.THURSDAY)),
            byMass,
            Importance.MUST,
            new Animal.Leeway(0, 1)),
        List.of(),
        Period.ALWAYS);
  }

  public static World world() {
    LocalDate openDay = LocalDate.parse("2031-02-20");
    Need chicks =
        new Need(
            "Open day", "chick", Grams.of(30), Grams.of(50), 4, new Meal.Days(openDay, openDay, openDay));
    return World.of(
        new Scenario(
            "the reading room",
            new Period(FIRST, FIRST.plusDays(55)),
            Currency.getInstance("EUR"),
            new Scenario.Collection(List.of(amber(), bark()), List.of(chicks)),
            new Scenario.Larder(
                List.of(
                    new Freezer("Kitchen", Litres.of(new java.math.BigDecimal("2")), "household", Freezer.Life.of(91), true),
                    new Freezer("Chest", Litres.of(new java.math.BigDecimal("3")), "deep", Freezer.Life.of(182), true)),
                List.of(
                    new StockLot("A1", ADULT, 18, "Kitchen", LocalDate.parse("2030-12-01"), LocalDate.parse("2031-03-01"))),
                List.of(new PlacedLot("P1", HOPPER, 4, FIRST.plusDays(7), FIRST.plusDays(8)))),
            List.of(hillside(), corner()),
            List.of(),
            new Policy(
                Policy.Demand.BEST_EFFORT,
                new Policy.Tail(28),
                Policy.FreezerCheck.AFTER_DELIVERY,
                new Policy.Charges(Money.of("0.001"), Money.ZERO, Money.ZERO, Money.of("0.25")),
                Policy.Safety.NONE)));
  }

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
                new Order.Line(ADULTS, 1, new TreeMap<>()),
                new Order.Line(HOPPERS, 2, new TreeMap<>(Map.of("winter", 2)))),
            Set.of("winter"),
            new Order.Boxes(
                2,
                List.of(
                    List.of(new Order.Content(ADULTS, 1), new Order.Content(HOPPERS, 1)),
                    List.of(new Order.Content(HOPPERS, 1)))));
    Order fetched =
        new Order(second, List.of(new Order.Line(SINGLE, 2, new TreeMap<>())), Set.of(), Order.Boxes.NONE);
    LocalDate inHand = LocalDate.parse("2030-12-01");
    List<Lot> lots =
        List.of(
            new Lot("A1", ADULT, 18, "Kitchen", inHand, inHand, LocalDate.parse("2031-03-01"), new Lot.InHand("A1")),
            new Lot(
                "P1",
                HOPPER,
                4,
                "Chest",
                FIRST.plusDays(7),
                FIRST.plusDays(8),
                FIRST.plusDays(7 + 181),
                new Lot.UnderWay("P1")),
            lot("O1", ADULT, 25, first, 182),
            lot("O2", HOPPER, 50, first, 182),
            lot("O3", SHOP_MOUSE, 2, second, 182));
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
    feedings.add(feeding("Amber 2031-01-10", "2031-01-11", ADULT, "A1"));
    List.of("01-17", "01-24", "01-31", "02-07", "02-14", "02-21", "02-28").forEach(
        day -> feedings.add(feeding("Amber 2031-" + day, "2031-" + day, ADULT, "A1")));
    List.of("01-16", "01-23", "01-30").forEach(
        day -> feedings.add(feeding("Bark 2031-" + day, "2031-" + day, HOPPER, "O2")));
    List.of("02-06", "02-13", "02-20", "02-27").forEach(
        day -> feedings.add(feeding("Bark 2031-" + day, "2031-" + day, ADULT, "A1")));
    List.of("03-07", "03-14", "03-21", "03-28").forEach(
        day -> feedings.add(feeding("Amber 2031-" + day, "2031-" + day, ADULT, "O1")));
    List.of("03-06", "03-13", "03-20").forEach(
        day -> feedings.add(feeding("Bark 2031-" + day, "2031-" + day, ADULT, "O1")));
    feedings.sort(java.util.Comparator.comparing(Feeding::day));
    return feedings;
  }

  private static Feeding feeding(String meal, String day, Item item, String lot) {
    return new Feeding(
        meal, LocalDate.parse(day), new Option(item, 1), 1, List.of(new Feeding.Draw(lot, 1)));
  }

  /**
   * The bill, by hand: hoppers 14.25 less 10 % are 12.83 a pack; goods 20.50 + 25.66 = 46.16; two boxes
   * 29 + 10 and 2 x 2 packing; tax 7 % of 89.16 is 6.24; 95.40 in all. Two single mice are 4.40. The last
   * tail meal is bought at 20.50 / 25 = 0.82.
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
    books.cash("pack-prices", first, Money.of("46.16"));
    books.cash("shipping", first, Money.of(43));
    books.cash("tax", first, Money.of("6.24"));
    books.cash("pack-prices", second, Money.of("4.40"));
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

  public static Inputs inputs(World world) {
    return new Inputs(
        world, DIGEST, List.of("corner: the prices are of 2030-08-01, more than 120 days before 2031-01-06."));
  }
}
