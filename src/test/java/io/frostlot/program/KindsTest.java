package io.frostlot.program;

import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Plate;
import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code -Dfrostlot.worlds=500} asks for more. */
class KindsTest {
  private static final int WORLDS = Math.max(20, Integer.getInteger("frostlot.worlds", 20));

  /** Rules that tie the meals of an animal together, and what is not of the scenario. */
  private static final Set<Feature> NEITHER =
      Set.of(
          Feature.LATE_LIMIT,
          Feature.KIND_SHARES,
          Feature.SELDOM_CHANGES,
          Feature.NEVER_CHANGES,
          Feature.ADEQUACY,
          Feature.EIGHT_WEEKS,
          Feature.PLEDGE,
          Feature.MOST_ORDERS,
          Feature.DUE_SOON);

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  private static World twins(long seed) {
    Set<Feature> features = EnumSet.complementOf(EnumSet.copyOf(NEITHER));
    return World.of(Twins.of(TinyWorlds.of(seed, features).scenario()));
  }

  /**
   * Twins eat alike, so the best plan of kinds is the best plan of all, and is there where one is.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_plan_of_kinds_comes_to_what_it_comes_to_handed_out_and_back(long seed) {
    World world = twins(seed);
    Kinds kinds = Kinds.merging(world);
    assertThat(kinds.merged().demands().size()).isLessThan(world.demands().size());

    Answer answer = Engine.solve(kinds.merged(), Limits.ofSeconds(600), Watch.NONE);
    if (answer instanceof Answer.Impossible) {
      assertThat(Engine.solve(world, Limits.ofSeconds(600), Watch.NONE))
          .isInstanceOf(Answer.Impossible.class);
      return;
    }
    Answer.Judged best = ((Answer.Proven) answer).plan();
    assertThat(best.standing()).isEqualTo(Faces.best(world).standing());

    Answer.WithPlan each = kinds.handedOut(new Answer.Proven(best, 0));
    assertThat(Engine.judge(world, each.plan().plan()).orElseThrow().standing())
        .isEqualTo(best.standing());
    Plan merged = kinds.merge(each.plan().plan());
    assertThat(Engine.judge(kinds.merged(), merged).orElseThrow().standing())
        .isEqualTo(best.standing());
  }

  /** Both eat on days 2 and 4; there are mice of 20 and of 30 g. */
  private static World ashAndBay() {
    Pack light = SmallWorld.pack(prey("Light", "mouse", 20), 2, "2");
    Pack heavy = SmallWorld.pack(prey("Heavy", "mouse", 30), 2, "2");
    return new SmallWorld(5, SmallSupplier.selling(light, heavy))
        .animal(Eaters.onEvenDays("Ash", Plate.ANY))
        .animal(Eaters.onEvenDays("Bay", Plate.ANY))
        .world();
  }

  /** A light and a heavy mouse on each of two days: who has the light one first has 30 g next. */
  @Test
  void nobody_gets_all_the_light_pieces() {
    World world = ashAndBay();
    List<Mouths.Served> served = new ArrayList<>();
    for (Alike alike : world.meals().alike()) {
      assertThat(alike.members()).hasSize(2);
      for (Option option : alike.first().options()) {
        int day = Timeline.day(alike.first().meal().days().best());
        List<Feeding.Draw> draws = List.of(new Feeding.Draw("lot", 1));
        served.add(new Mouths.Served(alike, option, day, 1, draws));
      }
    }

    Map<String, Double> fed = new TreeMap<>();
    for (Feeding feeding : AmongAlike.of(served)) {
      String eater = world.demandsById().get(feeding.mealId()).meal().eater();
      fed.merge(eater, feeding.option().grams().toDouble(), Double::sum);
    }
    assertThat(fed).isEqualTo(Map.of("Ash", 50.0, "Bay", 50.0));
  }

  /** What is not met, or met by too much, cannot be handed out as if it were. */
  @Test
  void a_plan_that_is_not_what_it_was_said_to_be_is_not_handed_out() {
    Kinds kinds = Kinds.merging(ashAndBay());
    Answer.Judged best = Faces.best(kinds.merged());
    Plan hungry = new Plan(best.plan().orders(), best.plan().lots(), List.of(), List.of());
    Answer.Judged untrue = new Answer.Judged(hungry, best.books());
    assertThat(best.plan().feedings()).isNotEmpty();
    assertThatThrownBy(() -> kinds.handedOut(new Answer.Proven(untrue, 0)))
        .isInstanceOf(IllegalStateException.class);
  }
}
