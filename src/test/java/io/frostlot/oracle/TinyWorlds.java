package io.frostlot.oracle;

import io.frostlot.plan.DueSoon;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Random worlds of a few days, items and meals: small enough to try everything, and with limits
 * tight enough that each rule matters in some of them.
 */
public final class TinyWorlds {
  private static final int MOST_SLOTS = 3;
  private static final int EIGHT_WEEKS = 56;

  /** In eight weeks there would be too much to try. */
  private static final Set<Feature> SHORT_ONLY = EnumSet.of(Feature.MOVES, Feature.SORTED_BAGS);

  private TinyWorlds() {}

  /** The world of a seed, any feature. */
  public static World of(long seed) {
    return of(seed, EnumSet.allOf(Feature.class));
  }

  /** The world of a seed with no other features than these. */
  public static World of(long seed, Set<Feature> allowed) {
    return of(new Dice(seed, allowed), seed);
  }

  /** The world of a seed with these features, and any other. */
  public static World having(long seed, Set<Feature> certain) {
    Dice dice = new Dice(seed, EnumSet.allOf(Feature.class));
    dice.features().addAll(certain);
    return of(dice, seed);
  }

  private static World of(Dice dice, long seed) {
    if (dice.isLong()) {
      dice.features().removeAll(SHORT_ONLY);
    }
    if (dice.has(Feature.NEVER_CHANGES) && dice.has(Feature.TWO_PIECES)) {
      // meals are wider there: with halves of bags as well there would be too much to try
      dice.features().remove(Feature.SORTED_BAGS);
    }
    boolean two = dice.has(Feature.SECOND_FREEZER);
    if (two && dice.has(Feature.MOVES)) {
      dice.features().remove(Feature.SORTED_BAGS);
    }
    if (two && (dice.has(Feature.BEST_BEFORE) || dice.has(Feature.MOVES))) {
      // every piece of two freezers by itself: more than one supplier's are too many to try
      dice.features().remove(Feature.SECOND_SUPPLIER);
    }
    int last = dice.between(3, 4) + (dice.isLong() ? EIGHT_WEEKS - 4 : 0);
    Period planning = new Period(Dice.FIRST, Dice.FIRST.plusDays(last));
    List<Supplier> suppliers = new ArrayList<>();
    suppliers.add(new TinySupplier("east", dice).make(dice.between(1, 2)));
    if (dice.has(Feature.SECOND_SUPPLIER)) {
      suppliers.add(new TinySupplier("west", dice).make(1));
    }
    List<Item> items =
        suppliers.stream()
            .flatMap(s -> s.sheet().packs().stream())
            .map(pack -> pack.item())
            .distinct()
            .toList();
    if (dice.has(Feature.SORTED_BAGS)) {
      suppliers.replaceAll(TinyWorlds::sorted);
    }
    TinyKeeper keeper = new TinyKeeper(dice, planning, items);
    return withFewSlots(
        dice,
        World.of(
            new Scenario(
                "seed " + seed + " " + dice.features(),
                planning,
                Currency.getInstance(
                    dice.has(Feature.OTHER_CURRENCY) ? dice.oneOf("JPY", "KWD") : "EUR"),
                keeper.collection(),
                keeper.larder(),
                suppliers,
                away(dice, keeper),
                policy(dice))));
  }

  private static List<Period> away(Dice dice, TinyKeeper keeper) {
    List<Period> away = new ArrayList<>(dice.oneIn(10) ? List.of(dice.days(0)) : List.of());
    away.addAll(keeper.away());
    return away;
  }

  private static Supplier sorted(Supplier supplier) {
    List<Pack> packs = supplier.sheet().packs().stream().map(Pack::sortedAtHome).toList();
    return supplier.withSheet(supplier.sheet().withPacks(packs));
  }

  private static World withFewSlots(Dice dice, World world) {
    List<Slot> slots = new ArrayList<>(world.slots());
    while (slots.size() > MOST_SLOTS) {
      slots.remove(dice.between(0, slots.size() - 1));
    }
    World few = world.withSlots(slots);
    World pledged = dice.has(Feature.PLEDGE) ? few.withPledges(List.of(pledge(dice, few))) : few;
    World limited =
        dice.has(Feature.MOST_ORDERS) ? pledged.withMostOrders(dice.oneIn(8) ? 0 : 1) : pledged;
    return dice.has(Feature.DUE_SOON)
        ? limited.withDueSoon(dueSoon(dice, world.slots(), limited))
        : limited;
  }

  /** An earlier plan's orders, one now and then by a delivery that is gone. */
  private static DueSoon dueSoon(Dice dice, List<Slot> all, World world) {
    Period dates = new Period(Dice.FIRST, Dice.FIRST.plusDays(dice.between(0, 3)));
    SortedMap<Slot, DueSoon.Due> orders = new TreeMap<>();
    for (int count = dice.between(0, 2); count > 0; count--) {
      List<Slot> slots = dice.oneIn(5) || world.slots().isEmpty() ? all : world.slots();
      List<Slot> soon = slots.stream().filter(slot -> dates.contains(slot.ordered())).toList();
      if (!soon.isEmpty()) {
        Slot slot = dice.oneOf(soon);
        SortedMap<String, Integer> packs = new TreeMap<>();
        dice.someOf(world.supplier(slot.supplier()).sheet().packs())
            .forEach(pack -> packs.put(pack.id(), dice.between(1, 2)));
        orders.put(slot, new DueSoon.Due(slot, packs));
      }
    }
    return new DueSoon(dates, List.copyOf(orders.values()), dice.cents(5, 250));
  }

  /** Of packs small enough that it can be kept more often than not. */
  private static Pledge pledge(Dice dice, World world) {
    List<Supplier> open =
        world.scenario().suppliers().stream()
            .filter(s -> world.slots().stream().anyMatch(slot -> slot.supplier().equals(s.id())))
            .toList();
    Supplier supplier = dice.oneOf(open.isEmpty() ? world.scenario().suppliers() : open);
    Set<String> rows = new TreeSet<>();
    dice.someOf(supplier.sheet().packs()).forEach(pack -> rows.add(pack.id()));
    supplier.sheet().packs().stream()
        .min(Comparator.comparing(pack -> pack.packed().grams()))
        .ifPresent(pack -> rows.add(pack.id()));
    Period dates = dice.oneIn(4) ? dice.days(3) : Period.ALWAYS;
    int boxes = dice.oneIn(4) ? 1 : Pledge.ANY_BOXES;
    int packs = dice.oneIn(4) ? 2 : 1;
    return new Pledge(
        supplier.id(),
        rows,
        dates,
        dice.oneIn(3) ? Pledge.Packs.atMost(packs) : Pledge.Packs.atLeast(packs),
        boxes);
  }

  private static Policy policy(Dice dice) {
    boolean effort = dice.has(Feature.EFFORT);
    return new Policy(
        dice.has(Feature.ALL_MEALS) ? Policy.Demand.ALL : Policy.Demand.BEST_EFFORT,
        dice.has(Feature.TAIL) ? new Policy.Tail(dice.between(1, 3)) : Policy.Tail.NONE,
        dice.has(Feature.END_OF_DAY)
            ? Policy.FreezerCheck.END_OF_DAY
            : Policy.FreezerCheck.AFTER_DELIVERY,
        new Policy.Charges(
            new HoldingCharge(
                dice.has(Feature.HOLDING)
                    ? new Money(BigDecimal.valueOf(dice.between(1, 300), 3))
                    : Money.ZERO,
                dice.has(Feature.LITRE_NIGHTS) ? Money.of(dice.between(1, 5)) : Money.ZERO),
            effort ? dice.cents(10, 150) : Money.ZERO,
            effort ? dice.cents(10, 150) : Money.ZERO,
            dice.has(Feature.LEEWAY) ? dice.cents(5, 90) : Money.ZERO,
            dice.has(Feature.BEST_BEFORE) ? dice.cents(10, 150) : Money.ZERO),
        new Policy.Safety(
            dice.has(Feature.COVER) ? dice.between(1, 2) : 0,
            dice.has(Feature.MARGIN) ? Percent.of(dice.oneOf("10", "50", "100")) : Percent.ZERO,
            dice.has(Feature.FOOD_ELSEWHERE) && dice.has(Feature.SECOND_FREEZER)
                ? new Policy.SecondFreezer(dice.between(1, 3))
                : Policy.SecondFreezer.NONE),
        new Policy.Adequacy(
            dice.has(Feature.ADEQUACY),
            Percent.of("90"),
            Percent.of(dice.has(Feature.ADEQUACY) ? dice.oneOf("105", "110") : "105")),
        Policy.Ordering.FREE.withBudget(
            dice.has(Feature.BUDGET) ? budget(dice) : Policy.Budget.NONE),
        dice.has(Feature.MOVES)
            ? new MovesPolicy(dice.between(2, 4), dice.cents(1, 20))
            : MovesPolicy.NONE);
  }

  private static Policy.Budget budget(Dice dice) {
    return new Policy.Budget(
        dice.oneIn(2) ? dice.cents(150, 900) : Money.ZERO,
        dice.oneIn(2) ? dice.cents(200, 1200) : Money.ZERO,
        dice.oneIn(3) ? dice.cents(1, 500) : Money.ZERO);
  }
}
