package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;

/**
 * The plain lot-sizing problem as a world: one item, a shop open every day, a charge per order that
 * depends on the day, so many pieces needed each day.
 *
 * @param demand pieces by day
 * @param packs price by pieces of a pack
 * @param charge of an order by day
 */
record DailyShop(int[] demand, Map<Integer, Money> packs, int[] charge, Store store) {
  private static final LocalDate FIRST = LocalDate.of(2031, 3, 3);
  private static final Item MOUSE =
      new Item(
          "shop/mouse",
          "mouse",
          "mouse",
          "adult",
          Item.Spread.exactly(Grams.of(20)),
          new Litres(1_000_000));

  /**
   * How pieces are kept, and bought at most.
   *
   * @param mostPacks of a row in one order
   * @param capacity pieces at the end of a day
   * @param stock pieces in hand
   */
  record Store(int mostPacks, int capacity, int stock, Money holding) {}

  World world() {
    return World.of(
        new Scenario(
            "daily shop",
            new Period(FIRST, FIRST.plusDays(demand.length - 1L)),
            Currency.getInstance("EUR"),
            new Scenario.Collection(List.of(), needs()),
            larder(),
            List.of(supplier()),
            List.of(),
            new Policy(
                Policy.Demand.ALL,
                Policy.Tail.NONE,
                Policy.FreezerCheck.END_OF_DAY,
                new Policy.Charges(store.holding, Money.ZERO, Money.ZERO, Money.ZERO),
                Policy.Safety.NONE,
                Policy.Adequacy.NONE)));
  }

  private List<Need> needs() {
    List<Need> needs = new ArrayList<>();
    for (int t = 0; t < demand.length; t++) {
      LocalDate day = FIRST.plusDays(t);
      needs.add(
          new Need(
              "day " + (t + 1),
              "mouse",
              Grams.of(20),
              Grams.of(20),
              demand[t],
              new Meal.Days(day, day, day)));
    }
    return needs;
  }

  private Scenario.Larder larder() {
    Freezer freezer =
        new Freezer(
            "store",
            MOUSE.litres().times(store.capacity),
            "household",
            Freezer.Life.of(demand.length),
            true);
    List<StockLot> stock = new ArrayList<>();
    if (store.stock > 0) {
      stock.add(
          new StockLot("old", MOUSE, store.stock, "store", FIRST.minusDays(1), FIRST.plusDays(99)));
    }
    return new Scenario.Larder(List.of(freezer), stock, List.of());
  }

  private Supplier supplier() {
    List<Pack> rows = new ArrayList<>();
    packs.forEach(
        (pieces, price) ->
            rows.add(
                new Pack(
                    MOUSE,
                    pieces,
                    price,
                    new Pack.Availability(store.mostPacks, Pack.UNLIMITED, Period.ALWAYS),
                    new Pack.Packed(Grams.of(20 * pieces), MOUSE.litres().times(pieces)))));
    List<Shipping.OrderCharge> charges = new ArrayList<>();
    for (int t = 0; t < charge.length; t++) {
      LocalDate day = FIRST.plusDays(t);
      charges.add(new Shipping.OrderCharge(new Period(day, day), Money.of(charge[t])));
    }
    return new Supplier(
        "shop",
        "shop",
        new Supplier.PriceSheet(FIRST, rows, List.of(), List.of()),
        OrderTerms.PLAIN,
        Boxing.NONE,
        new Shipping(Shipping.Rate.FREE, Shipping.Packing.FREE, List.of(), charges),
        new Delivery.Shop(
            new Delivery.Lead(0, false, 0, List.of()), EnumSet.allOf(DayOfWeek.class)));
  }
}
