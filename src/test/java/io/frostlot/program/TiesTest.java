package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Packs of 6, 9 and 20 priced 6, 9 and 20: two ways to pay 43 pieces with 44. */
class TiesTest {
  private static final Path COINS =
      Path.of("src/test/resources/io/frostlot/published/coin-problem");
  private static final long MILLIS = 60_000;

  private final World world = World.of(((Reading.Accepted) ScenarioFolder.read(COINS)).scenario());

  private Answer.Judged bought(int sixes, int nines, int twenties) {
    Attempt attempt = new Attempt(world, new Judging(world, new Apart()));
    Slot slot = world.slots().get(0);
    Map<Integer, Integer> counts = Map.of(6, sixes, 9, nines, 20, twenties);
    Map<Pack, Integer> packs =
        world.supplier(slot.supplier()).sheet().packs().stream()
            .collect(Collectors.toMap(pack -> pack, pack -> counts.get(pack.pieces())));
    double[] point = attempt.pointOf(Map.of(slot, packs), Scip.Budget.ofMillis(MILLIS));
    return attempt.finish(point, OptionalInt.empty()).orElseThrow();
  }

  /** 4 x 6 + 20 = 44 = 6 + 2 x 9 + 20. */
  @Test
  void equally_good_plans_come_to_the_same_one() {
    Answer.Judged one = bought(4, 0, 1);
    Answer.Judged other = bought(1, 2, 1);
    assertThat(one.standing()).isEqualTo(other.standing());

    List<Order> chosen =
        new Ties(world, one, new Apart(), () -> MILLIS, OptionalInt.empty())
            .choose(true)
            .plan()
            .orders();

    assertThat(
            new Ties(world, other, new Apart(), () -> MILLIS, OptionalInt.empty())
                .choose(true)
                .plan()
                .orders())
        .isEqualTo(chosen);
  }
}
