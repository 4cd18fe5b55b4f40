package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Cutting;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Standing;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What relaxations with one freezer know of bags, held to trying every way to hand bags out. */
class BagsInAllTest {
  private static final int WORLDS = 12;
  private static final Cutting WHOLE = new Cutting(Map.of(), false);

  /** By hand: Ann and Bo need half a bag each; two bags where none may be cut, one where it may. */
  @Test
  void a_bag_that_may_not_be_cut_goes_to_one() {
    assertThat(comesTo("20", JointByHand.wholeBags().world())).isTrue();
    assertThat(comesTo("10", world(Cutting.ANY, 0, 5, 5))).isTrue();
  }

  /** One delivery, bags of ten at 10.00 and of four at 5.00: nothing else but bags is asked. */
  @Test
  void whole_bags_cost_what_trying_every_number_finds() {
    Random random = new Random(3);
    for (int i = 0; i < WORLDS; i++) {
      int[] needs = {1 + random.nextInt(19), 1 + random.nextInt(19)};
      String least = "" + (cheapest(needs[0]) + cheapest(needs[1]));
      World world = world(WHOLE, 0, needs);
      assertThat(comesTo(least, world)).as(needs[0] + " and " + needs[1]).isTrue();
    }
  }

  /** Ann has seven of ten: a small bag for her, and Bo's seven take a large one. */
  @Test
  void what_is_in_hand_feeds_its_keeper_only() {
    assertThat(comesTo("15", world(WHOLE, 7, 10, 7))).isTrue();
  }

  private static int cheapest(int pieces) {
    int least = Integer.MAX_VALUE;
    for (int large = 0; large <= 2; large++) {
      int small = Math.max(0, (pieces - 10 * large + 3) / 4);
      least = Math.min(least, 10 * large + 5 * small);
    }
    return least;
  }

  private static boolean comesTo(String money, World world) {
    Optional<Standing> expected = Optional.of(Faces.costs(money));
    return LevelByLevel.comesTo(expected, world, new Coarse(world).program());
  }

  private static World world(Cutting cutting, int inHand, int... needs) {
    Delivery once = new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(1)));
    SmallWorld small =
        new SmallWorld(
                3,
                SmallSupplier.selling(
                        SmallWorld.pack(MOUSE, 10, "10.00"), SmallWorld.pack(MOUSE, 4, "5.00"))
                    .delivery(once))
            .freezers(
                SmallWorld.freezer("A", "60", Freezer.Life.of(9)),
                SmallWorld.freezer("B", "60", Freezer.Life.of(9)))
            .need(1, needs[0])
            .need(3, needs[1]);
    if (inHand > 0) {
      small.stock("in hand", inHand, 9);
    }
    Map<String, String> whose = Map.of("A", "ann", "B", "bo", "day 1", "ann", "day 3", "bo");
    Joint joint =
        new Joint(whose, Map.of(), cutting, new Joint.Collecting("ann", Set.of(), Waiting.NONE));
    return small.world().withJoint(joint);
  }
}
