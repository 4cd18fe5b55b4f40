package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;

import io.frostlot.plan.Cutting;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Standing;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.units.Litres;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Ann and Bo order together: bags of ten mice at 10.00, once, on day 1; Ann needs five mice on day
 * 1, Bo five on day 3. A mouse takes a litre.
 *
 * @param best derived by hand
 */
record JointByHand(World world, Standing best) {
  private static final Pack BAG = SmallWorld.pack(MOUSE, 10, "10.00");

  static Pack bag() {
    return BAG;
  }

  /** No bag may be cut, so it takes two. */
  static JointByHand wholeBags() {
    return new JointByHand(
        world(3, new Cutting(Map.of(), false), Set.of(), Waiting.NONE), Faces.costs("20"));
  }

  /**
   * One bag is cut; of five mice that Bo collects on day 2, Ann has room for four: one is unmet.
   */
  static JointByHand waiting() {
    Waiting fourLitres = new Waiting(Litres.of(new BigDecimal("4")), 9);
    return new JointByHand(world(3, Cutting.ANY, Set.of(day(2)), fourLitres), Faces.unmet(1, "10"));
  }

  /** Ann, who receives, needs five mice on day 1, Bo five on day 3; a bag of ten comes on day 1. */
  static World world(int days, Cutting cutting, Set<LocalDate> collected, Waiting waiting) {
    Delivery once = new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(1)));
    World alone =
        new SmallWorld(days, SmallSupplier.selling(BAG).delivery(once))
            .freezers(
                SmallWorld.freezer("A", "20", Freezer.Life.of(9)),
                SmallWorld.freezer("B", "20", Freezer.Life.of(9)))
            .need(1, 5)
            .need(3, 5)
            .world();
    Map<String, String> whose = Map.of("A", "ann", "B", "bo", "day 1", "ann", "day 3", "bo");
    Joint joint =
        new Joint(whose, Map.of(), cutting, new Joint.Collecting("ann", collected, waiting));
    return alone.withJoint(joint);
  }
}
