package io.frostlot.bench;

import io.frostlot.keeping.Animal;
import io.frostlot.plan.Agreement;
import io.frostlot.plan.Cutting;
import io.frostlot.plan.Group;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Waiting;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Draws a group of keepers who order together: each with animals, freezers of two kinds, food for
 * the first weeks and a pack under way of its own, all with the same two carriers and a shop, drawn
 * for what they eat together: a box takes two usual orders of the group, so that of one keeper
 * alone it stays half empty. Everybody may be host, and keeps what a box holds for ten days. Of the
 * large bags a part may be cut, into portions of the small bag. With an even seed the others
 * collect every second Saturday only, with an odd one on the day of arrival. The policy is that of
 * a scenario in which effort is reckoned and no adequacy asked for. The same seed draws the same
 * group.
 */
public final class GroupDraw {
  private static final LocalDate FIRST = LocalDate.of(2031, 3, 3);
  private static final double MAY_BE_CUT = 0.4;

  /** Bags are large for a few animals. */
  private static final double ROOMY = 2;

  private static final int WAITING_DAYS = 10;
  private final int members;
  private final RoomSize size;
  private final long seed;
  private final Period planning;
  private final Chance chance;

  private GroupDraw(int members, RoomSize size, long seed) {
    this.members = members;
    this.size = size;
    this.seed = seed;
    planning = new Period(FIRST, FIRST.plusDays(7L * size.weeks() - 1));
    chance = new Chance(size, seed);
  }

  /**
   * The group of a seed.
   *
   * @param members how many, at least 2
   * @param size of each member's room
   */
  public static DrawnGroup of(int members, RoomSize size, long seed) {
    return new DrawnGroup(size, seed, new GroupDraw(members, size, seed).group());
  }

  private Group group() {
    List<List<Animal>> collections = new ArrayList<>();
    for (int i = 0; i < members; i++) {
      collections.add(new AnimalDraw(size, chance, planning).animals());
    }
    List<Animal> everybody = collections.stream().flatMap(List::stream).toList();
    Calibration together = calibration(everybody);
    List<Supplier> suppliers = new SupplierDraw(size, chance, planning, together).plain();
    Waiting waiting = new Waiting(litres(together.box().boxKg()), WAITING_DAYS);
    List<Keeper> keepers = new ArrayList<>();
    for (List<Animal> animals : collections) {
      String name = String.format(Locale.ROOT, "Keeper %d", keepers.size() + 1);
      keepers.add(new Keeper(name, scenario(name, animals, suppliers), waiting));
    }
    return new Group(
        "Drawn group of " + members + " " + size + " " + seed + " (invented)",
        keepers,
        new Agreement(keepers.stream().map(Keeper::name).toList(), handOvers(), cutting(suppliers)),
        new Group.Terms(
            "base-and-weight",
            Percent.of("50"),
            Money.ZERO,
            new Group.Afterwards(Group.DropOut.UNTIL_TAKEN, Group.Loss.ALL)));
  }

  private Calibration calibration(List<Animal> animals) {
    return Calibration.of(size, planning, new Appetite(animals, planning));
  }

  private static Litres litres(double kg) {
    return new Litres(Math.round(Appetite.litres(kg)) * 1_000_000);
  }

  private Scenario scenario(String name, List<Animal> animals, List<Supplier> suppliers) {
    return new Scenario(
        name + " (invented)",
        planning,
        Currency.getInstance("EUR"),
        new Scenario.Collection(animals, List.of()),
        new LarderDraw(size, FIRST)
            .larder(ROOMY * calibration(animals).litres(), animals, suppliers.get(0)),
        suppliers,
        List.of(),
        policy());
  }

  private Policy policy() {
    return new Policy(
        Policy.Demand.BEST_EFFORT,
        new Policy.Tail(size.tailDays()),
        Policy.FreezerCheck.AFTER_DELIVERY,
        new Policy.Charges(Money.ZERO, Money.of("2.50"), Money.of(1), Money.of("0.25")),
        Policy.Safety.NONE,
        Policy.Adequacy.NONE);
  }

  /** Every second Saturday. */
  private Set<LocalDate> handOvers() {
    if (seed % 2 != 0) {
      return Set.of();
    }
    LocalDate first = FIRST.with(TemporalAdjusters.next(DayOfWeek.SATURDAY)).plusWeeks(1);
    return IntStream.range(0, size.weeks() / 2)
        .mapToObj(i -> first.plusWeeks(2L * i))
        .collect(Collectors.toSet());
  }

  private Cutting cutting(List<Supplier> suppliers) {
    Map<String, Pack> large = new TreeMap<>();
    suppliers.stream()
        .filter(supplier -> !supplier.isPickUp())
        .flatMap(supplier -> supplier.sheet().packs().stream())
        .filter(pack -> pack.pieces() > Prey.packCount(pack.item().grams().mean().toDouble()))
        .forEach(pack -> large.put(pack.id(), pack));
    Map<String, Integer> leastPieces = new HashMap<>();
    large.forEach(
        (id, pack) -> {
          if (chance.in(MAY_BE_CUT)) {
            leastPieces.put(id, pack.pieces() / size.smallInLarge());
          }
        });
    return new Cutting(leastPieces, false);
  }
}
