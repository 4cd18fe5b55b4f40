package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * However the program is written down, with the rows and bounds that strengthen it or without, it
 * comes to what trying everything comes to: on random tiny worlds, over every subset of the price
 * rules in turn; {@code -Dfrostlot.formulations=640} asks for more of them.
 */
class FormulationsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.formulations", 24);
  private static final List<Feature> PRICE_RULES =
      List.of(
          Feature.BREAK,
          Feature.SALE,
          Feature.DISCOUNT,
          Feature.MINIMUM_ORDER,
          Feature.FREE_SHIPPING,
          Feature.TAX);
  private static final Map<Long, Optional<Standing>> EXPECTED = new ConcurrentHashMap<>();
  private static final int SUBSETS = 1 << PRICE_RULES.size();

  /** With few worlds a few of the subsets, spread over all of them. */
  static LongStream seeds() {
    return LongStream.range(0, WORLDS).map(i -> WORLDS < SUBSETS ? i * SUBSETS / WORLDS : i);
  }

  private static World world(long seed) {
    Set<Feature> allowed = EnumSet.allOf(Feature.class);
    for (int i = 0; i < PRICE_RULES.size(); i++) {
      if ((seed >> i & 1) == 0) {
        allowed.remove(PRICE_RULES.get(i));
      }
    }
    return TinyWorlds.of(seed, allowed);
  }

  /** Tried once for both tests: in some worlds that takes long. */
  private static Optional<Standing> expected(long seed, World world) {
    return EXPECTED.computeIfAbsent(
        seed, some -> Exhaustive.best(world).map(Exhaustive.Found::standing));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void strengthened_or_not_the_optimum_is_the_same(long seed) {
    World world = world(seed);
    Optional<Standing> expected = expected(seed, world);
    for (boolean tight : List.of(true, false)) {
      for (boolean rows : List.of(true, false)) {
        Program program =
            Rules.program(
                world,
                new Formulation(
                    Grain.DAYS, true, tight, java.util.Set.of(), java.util.Optional.empty()));
        if (rows) {
          new CoverRows(program).add();
          OrderRoom.add(world, program);
        }
        assertThat(LevelByLevel.comesTo(expected, world, program))
            .as("%s, tight %s, rows %s", world.scenario().name(), tight, rows)
            .isTrue();
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_plain_program_proves_the_same_optimum(long seed) {
    World world = world(seed);
    Optional<Standing> expected = expected(seed, world);
    Answer answer = Plain.solve(world, Limits.ofSeconds(60), Watch.NONE);
    if (expected.isEmpty()) {
      assertThat(answer).as(world.scenario().name()).isInstanceOf(Answer.Impossible.class);
    } else {
      assertThat(answer).as(world.scenario().name()).isInstanceOf(Answer.Proven.class);
      Standing found = ((Answer.Proven) answer).plan().standing();
      assertThat(found.sameBeforeMoney(expected.get())).as("%s, %s", found, expected).isTrue();
      assertThat(found.money().minus(expected.get().money()).toDouble())
          .as(world.scenario().name())
          .isBetween(0.0, Math.pow(10, -world.decimals()) / 2);
    }
  }
}
