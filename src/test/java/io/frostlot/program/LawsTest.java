package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What must hold between the best plans of two worlds, whatever they are; {@code
 * -Dfrostlot.laws=500} asks for more worlds.
 */
class LawsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.laws", 8);

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  /** Empty where no plan keeps every rule. */
  private static Optional<Answer.Judged> best(World world) {
    Answer answer = Engine.solve(world, Limits.ofSeconds(30), Watch.NONE);
    if (answer instanceof Answer.Impossible) {
      return Optional.empty();
    }
    assertThat(answer).as(world.scenario().name()).isInstanceOf(Answer.Proven.class);
    return Optional.of(((Answer.Proven) answer).plan());
  }

  private static void assertNeverWorse(World world, World relaxed) {
    best(world)
        .map(Answer.Judged::standing)
        .ifPresent(
            before -> {
              Optional<Standing> after = best(relaxed).map(Answer.Judged::standing);
              assertThat(after).as(world.scenario().name()).isPresent();
              assertThat(halfUnitLess(after.orElseThrow(), world))
                  .as("%s, before %s", world.scenario().name(), before)
                  .isLessThanOrEqualTo(before);
            });
  }

  private static Standing halfUnitLess(Standing standing, World world) {
    double halfUnit = Math.pow(10, -world.decimals()) / 2;
    return new Standing(
        standing.unmetMust(),
        standing.unmetOther(),
        standing.shortfall(),
        standing.money().minus(new Money(BigDecimal.valueOf(halfUnit))));
  }

  private static World changed(World world, Scenario scenario) {
    List<Slot> slots = new ArrayList<>(world.slots());
    Set<Slot> before = Set.copyOf(World.of(world.scenario()).slots());
    World changed =
        World.of(scenario)
            .withPledges(world.pledges())
            .withMostOrders(world.mostOrders())
            .withDueSoon(world.dueSoon());
    changed.slots().stream().filter(slot -> !before.contains(slot)).forEach(slots::add);
    return changed.withSlots(slots.stream().sorted().toList());
  }

  private static World withFreezers(World world, UnaryOperator<Freezer> change) {
    Scenario.Larder larder = world.scenario().larder();
    List<Freezer> changed = larder.freezers().stream().map(change).toList();
    return changed(world, world.scenario().withLarder(larder.withFreezers(changed)));
  }

  private static World withSuppliers(World world, List<Supplier> suppliers) {
    return changed(world, world.scenario().withSuppliers(suppliers));
  }

  private static Pack inAnyTotal(Pack pack) {
    Pack.Availability there = pack.available();
    return pack.withAvailable(
        new Pack.Availability(there.perDelivery(), Pack.UNLIMITED, there.window()));
  }

  private static World withEach(World world, UnaryOperator<Supplier> change) {
    return withSuppliers(world, world.scenario().suppliers().stream().map(change).toList());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void more_room_is_never_worse(long seed) {
    World world = TinyWorlds.of(seed);
    assertNeverWorse(world, withFreezers(world, f -> f.withUsable(f.usable().times(2))));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_longer_life_is_never_worse(long seed) {
    World world = TinyWorlds.of(seed);
    assertNeverWorse(
        world,
        withFreezers(
            world,
            f ->
                f.withLife(
                    new Freezer.Life(
                        f.life().days() + 2,
                        f.life().smallBelow(),
                        f.life().smallDays() + 2,
                        f.life().best()))));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void more_packs_to_be_had_are_never_worse(long seed) {
    World world = TinyWorlds.having(seed, Set.of(Feature.IN_TOTAL));
    assertNeverWorse(
        world,
        withEach(
            world,
            s -> {
              List<Pack> packs = s.sheet().packs().stream().map(LawsTest::inAnyTotal).toList();
              return s.withSheet(s.sheet().withPacks(packs));
            }));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void larger_boxes_are_never_worse_where_totals_count(long seed) {
    Set<Feature> features = EnumSet.allOf(Feature.class);
    features.remove(Feature.BOXES_WHOLE_PACKS);
    World world = TinyWorlds.of(seed, features);
    assertNeverWorse(
        world,
        withEach(
            world,
            s ->
                s.withBoxing(
                    new Boxing(s.boxing().way(), Boxing.Limits.NONE, s.boxing().mostBoxes()))));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void fewer_days_away_are_never_worse(long seed) {
    World world = TinyWorlds.of(seed);
    assertNeverWorse(world, changed(world, world.scenario().withAway(List.of())));
  }

  /**
   * Without a tail, in which a supplier may offer prey to a meal that had none and is now bought.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void another_supplier_is_never_worse(long seed) {
    World both = withoutTail(TinyWorlds.having(seed, Set.of(Feature.SECOND_SUPPLIER)));
    Supplier first = both.scenario().suppliers().get(0);
    List<Slot> own =
        both.slots().stream().filter(slot -> slot.supplier().equals(first.id())).toList();
    assertNeverWorse(withSuppliers(both, List.of(first)).withSlots(own), both);
  }

  private static World withoutTail(World world) {
    Scenario s = world.scenario();
    return changed(world, s.withPolicy(s.policy().withTail(Policy.Tail.NONE)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_order_of_rows_changes_nothing(long seed) {
    World world = TinyWorlds.of(seed);
    Scenario given = world.scenario();
    Scenario.Larder larder = given.larder();
    Scenario other =
        with(
                given,
                new Scenario.Collection(
                    shuffled(given.collection().animals(), seed),
                    shuffled(given.collection().needs(), seed)))
            .withLarder(
                new Scenario.Larder(
                    shuffled(larder.freezers(), seed),
                    shuffled(larder.stock(), seed),
                    shuffled(larder.placed(), seed)));
    World shuffled =
        withSuppliers(
            changed(world, other),
            shuffled(
                world.scenario().suppliers().stream()
                    .map(s -> s.withSheet(s.sheet().withPacks(shuffled(s.sheet().packs(), seed))))
                    .toList(),
                seed));
    assertThat(best(shuffled).map(Answer.Judged::plan))
        .as(world.scenario().name())
        .isEqualTo(best(world).map(Answer.Judged::plan));
  }

  private static Scenario with(Scenario s, Scenario.Collection collection) {
    return new Scenario(
        s.name(),
        s.planning(),
        s.currency(),
        collection,
        s.larder(),
        s.suppliers(),
        s.away(),
        s.policy());
  }

  private static <T> List<T> shuffled(List<T> rows, long seed) {
    List<T> mixed = new ArrayList<>(rows);
    Collections.shuffle(mixed, new Random(seed));
    return mixed;
  }
}
