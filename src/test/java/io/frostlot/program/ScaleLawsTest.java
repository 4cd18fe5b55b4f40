package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import io.frostlot.keeping.Animal;
import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be twice as large where something is; {@code -Dfrostlot.laws=500} asks for more. */
class ScaleLawsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.laws", 8);

  /** Best is proven to that. */
  private static final double HALF_CENT = 0.005;

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  /** Without percentages and steps, which are rounded, and in a currency with two decimals. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void doubled_money_doubles_the_bill(long seed) {
    Set<Feature> features = EnumSet.allOf(Feature.class);
    features.removeAll(
        Set.of(
            Feature.BREAK,
            Feature.SALE,
            Feature.SECOND_SALE,
            Feature.SALE_LIMIT,
            Feature.DISCOUNT,
            Feature.SECOND_DISCOUNT,
            Feature.TAX,
            Feature.ALL_MEALS,
            Feature.PLEDGE,
            Feature.OTHER_CURRENCY));
    World world = TinyWorlds.of(seed, features);
    World doubled =
        World.of(Doubled.of(world.scenario()))
            .withSlots(world.slots())
            .withMostOrders(world.mostOrders())
            .withDueSoon(Doubled.of(world.dueSoon()));

    Standing once = Faces.best(world).standing();
    Standing twice = Faces.best(doubled).standing();

    String name = world.scenario().name();
    assertThat(twice.unmetMust()).as(name).isEqualTo(once.unmetMust());
    assertThat(twice.unmetOther()).as(name).isEqualTo(once.unmetOther());
    assertThat(twice.shortfall()).as(name).isEqualTo(once.shortfall());
    assertThat(twice.money().toDouble())
        .as(name)
        .isCloseTo(2 * once.money().toDouble(), offset(2 * HALF_CENT + HALF_CENT));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void two_identical_animals_have_twice_the_target_grams_of_one(long seed) {
    Scenario one = TinyWorlds.of(seed).scenario();
    Scenario two = Twins.of(one);

    assertThat(targets(World.of(one))).isPositive();
    assertThat(targets(World.of(two))).isEqualTo(2 * targets(World.of(one)));
  }

  /** Milligrams of the targets of all meals of animals. */
  private static long targets(World world) {
    Set<String> names =
        world.scenario().collection().animals().stream()
            .map(Animal::name)
            .collect(Collectors.toSet());
    return world.demands().stream()
        .filter(demand -> names.contains(demand.meal().eater()))
        .mapToLong(
            demand -> demand.meal().count() * demand.meal().prey().window().target().milligrams())
        .sum();
  }
}
