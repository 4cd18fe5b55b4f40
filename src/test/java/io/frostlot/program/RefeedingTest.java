package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Replay;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Plans made without a thought of adequacy, fed anew: never worse, always valid, never below what
 * is proven to be the best.
 */
final class RefeedingTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 10);

  private static World blind(World world) {
    Policy policy = world.scenario().policy().withAdequacy(Policy.Adequacy.NONE);
    return World.of(world.scenario().withPolicy(policy));
  }

  private static void assertHolds(World world, Answer.Judged before, Answer.Judged after) {
    String name = world.scenario().name();
    assertThat(after.standing()).as(name).isLessThanOrEqualTo(before.standing());
    assertThat(after.books().breaches()).as(name).isEmpty();
    assertThat(Replay.of(world, after.plan()).breaches()).as(name).isEmpty();
    assertThat(after.plan().orders()).as(name).isEqualTo(before.plan().orders());
  }

  @Test
  void plans_are_never_better_than_the_best() {
    int looked = 0;
    for (long seed = 1; looked < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      if (world.scenario().policy().adequacy().asked()
          && world.joint().keepers().isEmpty()
          && Engine.solve(blind(world), Limits.ofSeconds(60), Watch.NONE)
              instanceof Answer.Proven light
          && Engine.solve(world, Limits.ofSeconds(60), Watch.NONE) instanceof Answer.Proven best) {
        Answer.Judged before = Rules.judge(world, light.plan().plan());
        if (!before.books().breaches().isEmpty()) {
          continue; // the other world knows nothing of earlier orders
        }
        looked++;
        Answer.Judged after = Refeeding.in(world).better(before);
        assertHolds(world, before, after);
        assertThat(after.standing()).isGreaterThanOrEqualTo(best.plan().standing());
      }
    }
  }

  /**
   * With a bag of each of two sizes in hand, least money alone gives an animal now this one, now
   * that, as it comes.
   */
  @Test
  void the_animals_of_the_small_room_have_more_even_meals() {
    Scenario demo =
        ((Reading.Accepted) ScenarioFolder.read(Path.of("scenarios/small-room"))).scenario();
    Scenario.Larder larder = demo.larder();
    List<StockLot> stock = new ArrayList<>(larder.stock());
    for (String item : List.of("frostmere/Fuzzy mouse", "frostmere/Hopper mouse")) {
      Keeps keeps = Keeps.until(demo.planning().to());
      stock.add(
          new StockLot(
              "bag of " + item,
              World.of(demo).items().get(item),
              50,
              larder.freezers().get(0).name(),
              demo.planning().from(),
              keeps));
    }
    World world =
        World.of(demo.withLarder(new Scenario.Larder(larder.freezers(), stock, larder.placed())));
    Limits limits = new Limits(Duration.ofMinutes(5), OptionalInt.of(1));
    Answer.WithPlan light = (Answer.WithPlan) Engine.solve(blind(world), limits, Watch.NONE);
    Answer.Judged before = Rules.judge(world, light.plan().plan());
    Answer.Judged after = Refeeding.in(world).better(before);
    assertHolds(world, before, after);
    assertThat(after.standing().shortfall()).isLessThan(before.standing().shortfall());
  }
}
