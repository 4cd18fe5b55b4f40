package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
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
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Set;

/**
 * A small invented room: two animals, one of them growing out of its prey, a need that no supplier
 * serves, two freezers, a supplier that ships in boxes and a shop. See {@link HandmadePlan}.
 */
public final class HandmadeRoom {
  public static final String DIGEST = "0123456789abcdef".repeat(4);
  public static final LocalDate FIRST = LocalDate.parse("2031-01-06");
  static final Item ADULT = item("hillside", "Adult mouse", "adult", 17, 21, 26);
  static final Item HOPPER = item("hillside", "Hopper", "hopper", 7, 10, 13);
  static final Item SHOP_MOUSE = item("corner", "Mouse", "adult", 18, 22, 26);
  static final Pack ADULTS = pack(ADULT, 25, "20.50");
  static final Pack HOPPERS = pack(HOPPER, 25, "14.25");
  static final Pack SINGLE = pack(SHOP_MOUSE, 1, "2.20");

  private HandmadeRoom() {}

  private static Item item(
      String supplier, String name, String word, int least, int mean, int most) {
    Item.Spread spread =
        new Item.Spread(Grams.of(least), Grams.of(mean), Grams.of(most), word.equals("hopper"));
    return new Item(
        supplier + "/" + name, name, "mouse", word, spread, Litres.ofPrey(Grams.of(mean)));
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
            "Open day",
            "chick",
            Grams.of(30),
            Grams.of(50),
            4,
            new Meal.Days(openDay, openDay, openDay));
    return World.of(
        new Scenario(
            "the reading room",
            new Period(FIRST, FIRST.plusDays(55)),
            Currency.getInstance("EUR"),
            new Scenario.Collection(List.of(amber(), bark()), List.of(chicks)),
            new Scenario.Larder(
                List.of(
                    new Freezer(
                        "Kitchen",
                        Litres.of(new java.math.BigDecimal("2")),
                        "household",
                        Freezer.Life.of(91),
                        true),
                    new Freezer(
                        "Chest",
                        Litres.of(new java.math.BigDecimal("3")),
                        "deep",
                        Freezer.Life.of(182),
                        true)),
                List.of(
                    new StockLot(
                        "A1",
                        ADULT,
                        18,
                        "Kitchen",
                        LocalDate.parse("2030-12-01"),
                        LocalDate.parse("2031-03-01"))),
                List.of(new PlacedLot("P1", HOPPER, 4, FIRST.plusDays(7), FIRST.plusDays(8)))),
            List.of(hillside(), corner()),
            List.of(),
            new Policy(
                Policy.Demand.BEST_EFFORT,
                new Policy.Tail(28),
                Policy.FreezerCheck.AFTER_DELIVERY,
                new Policy.Charges(Money.of("0.001"), Money.ZERO, Money.ZERO, Money.of("0.25")),
                Policy.Safety.NONE,
                Policy.Adequacy.NONE)));
  }

  public static Inputs inputs(World world) {
    return new Inputs(
        world,
        DIGEST,
        List.of("corner: the prices are of 2030-08-01, more than 120 days before 2031-01-06."));
  }
}
