package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * A world for the test of one rule, with what the test does not care about left out: a freezer "A"
 * of 1000 litres in which prey keeps 100 days, euros, no charges, no safety, no tail.
 */
final class SmallWorld {
  static final String SOURCE = "source";

  /** A piece takes a litre. */
  static final Item MOUSE = prey("Mouse", "mouse", 25);

  static final Pack SINGLE = pack(MOUSE, 1, "2.00");

  private final int days;
  private final List<SmallSupplier> suppliers;
  private final List<Need> needs = new ArrayList<>();
  private final List<Animal> animals = new ArrayList<>();
  private final List<StockLot> stock = new ArrayList<>();
  private final List<PlacedLot> placed = new ArrayList<>();
  private List<Freezer> freezers = List.of(freezer("A", "1000", Freezer.Life.of(100)));
  private Policy.Demand demand = Policy.Demand.BEST_EFFORT;
  private Policy.Tail tail = Policy.Tail.NONE;
  private Policy.FreezerCheck freezerCheck = Policy.FreezerCheck.AFTER_DELIVERY;
  private Policy.Charges charges = Policy.Charges.NONE;
  private Policy.Safety safety = Policy.Safety.NONE;
  private Policy.Ordering ordering = Policy.Ordering.FREE;
  private MovesPolicy moves = MovesPolicy.NONE;
  private String currency = "EUR";

  /**
   * A world without anybody who eats.
   *
   * @param days planning days
   */
  SmallWorld(int days, SmallSupplier... suppliers) {
    this.days = days;
    this.suppliers = List.of(suppliers);
  }

  /** Day 1 is the first planning day, a Wednesday. */
  static LocalDate day(int number) {
    return LocalDate.of(2031, 1, 1).plusDays(number - 1L);
  }

  static Period days(int from, int to) {
    return new Period(day(from), day(to));
  }

  /** Sold by the source; a piece takes a litre. */
  static Item prey(String name, String kind, int grams) {
    return new Item(
        SOURCE + "/" + name,
        name,
        kind,
        "",
        Item.Spread.exactly(Grams.of(grams)),
        Litres.of(BigDecimal.ONE));
  }

  /** As many as one likes; in a box the pieces take their own grams and litres. */
  static Pack pack(Item item, int pieces, String price) {
    return new Pack(
        item,
        pieces,
        Money.of(price),
        Pack.Availability.ANY,
        new Pack.Packed(item.grams().mean().times(pieces), item.litres().times(pieces)));
  }

  static Freezer freezer(String name, String litres, Freezer.Life life) {
    return new Freezer(name, Litres.of(new BigDecimal(litres)), "deep", life, true);
  }

  /** So many mice on a day, must-meals named after it: "day 3". */
  SmallWorld need(int day, int pieces) {
    return need(MOUSE, day, pieces);
  }

  SmallWorld need(Item item, int day, int pieces) {
    Meal.Days onTheDay = new Meal.Days(day(day), day(day), day(day));
    Grams grams = item.grams().mean();
    String label = item.equals(MOUSE) ? "day " + day : item.name() + " day " + day;
    return need(new Need(label, item.kind(), grams, grams, pieces, onTheDay));
  }

  SmallWorld need(Need need) {
    needs.add(need);
    return this;
  }

  SmallWorld animal(Animal animal) {
    animals.add(animal);
    return this;
  }

  SmallWorld freezers(Freezer... some) {
    freezers = List.of(some);
    return this;
  }

  /** In freezer A since before the first day. */
  SmallWorld stock(String id, int pieces, int useByDay) {
    return stock(new StockLot(id, MOUSE, pieces, "A", day(-30), day(useByDay)));
  }

  SmallWorld stock(StockLot lot) {
    stock.add(lot);
    return this;
  }

  SmallWorld placed(PlacedLot lot) {
    placed.add(lot);
    return this;
  }

  /** Every meal must be met. */
  SmallWorld everyMeal() {
    demand = Policy.Demand.ALL;
    return this;
  }

  SmallWorld tail(int tailDays) {
    tail = new Policy.Tail(tailDays);
    return this;
  }

  /** Freezers are checked at the end of the day. */
  SmallWorld checkedAtNight() {
    freezerCheck = Policy.FreezerCheck.END_OF_DAY;
    return this;
  }

  SmallWorld charges(Policy.Charges reckoned) {
    charges = reckoned;
    return this;
  }

  SmallWorld safety(Policy.Safety margins) {
    safety = margins;
    return this;
  }

  SmallWorld moves(int everyDays, String perPiece) {
    moves = new MovesPolicy(everyDays, Money.of(perPiece));
    return this;
  }

  SmallWorld ordering(Policy.Ordering asked) {
    ordering = asked;
    return this;
  }

  SmallWorld currency(String code) {
    currency = code;
    return this;
  }

  World world() {
    return World.of(
        new Scenario(
            "small",
            days(1, days),
            Currency.getInstance(currency),
            new Scenario.Collection(animals, needs),
            new Scenario.Larder(freezers, stock, placed),
            suppliers.stream().map(SmallSupplier::supplier).toList(),
            List.of(),
            new Policy(
                demand,
                tail,
                freezerCheck,
                charges,
                safety,
                Policy.Adequacy.NONE,
                ordering,
                moves)));
  }
}
