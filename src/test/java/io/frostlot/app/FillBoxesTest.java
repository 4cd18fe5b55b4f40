package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.Order;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A mouse is eaten on each of four Wednesdays, on which the carrier comes; each box is 10.00. There
 * is no tail.
 */
class FillBoxesTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private static final String SINGLES = OneMouseShop.SINGLES;
  private static final String PAIRS = "Mouse,mouse,adult,50,50,50,2,2.00\n";
  private static final Planner IDLE = (world, limits, watch) -> new Answer.NothingFound();
  private final Planner engine = new EnginePlanner();
  @TempDir private Path folder;

  /** A box holds so many pieces. */
  private World world(String prices, Boxing.Way way, int pieces) {
    Scenario scenario =
        new OneMouseShop(
                prices,
                new OneMouseShop.Extras("", ", \"tailDays\": 0"),
                new OneMouseShop.Keeping(60, 10))
            .world(folder)
            .scenario();
    Supplier carrier =
        new Supplier(
            "carrier",
            "Carrier (invented)",
            scenario.suppliers().get(0).sheet(),
            OrderTerms.PLAIN,
            new Boxing(way, new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, pieces), 9),
            new Shipping(
                new Shipping.Rate(Money.ZERO, Money.of(10), Money.of(10)),
                Shipping.Packing.FREE,
                List.of(),
                List.of()),
            new Delivery.Shipped(
                new Delivery.Lead(0, false, 0, List.of()),
                Set.of(DayOfWeek.WEDNESDAY),
                new Delivery.Transit(0, 0)));
    return World.of(scenario.withSuppliers(List.of(carrier)));
  }

  private Answer.WithPlan best(World world) {
    return (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE);
  }

  private static BoxRoom.Left left(Planner planner, World world, Answer.WithPlan shown) {
    BoxRoom room =
        new FillBoxes(planner).of(new Solved(world, shown), LIMITS, Watch.NONE).orElseThrow();
    return room.orders().get(0);
  }

  private static List<Integer> packs(BoxRoom.Left left) {
    return left.addition().get(0).packs().stream().map(Order.Content::packs).toList();
  }

  /** Four mice in two boxes of three, 24.00; a fifth costs 1.00 and nobody eats it. */
  @Test
  void nothing_is_worth_adding_to_the_best_plan() {
    World world = world(SINGLES, Boxing.Way.BY_TOTAL, 3);
    BoxRoom.Left left = left(engine, world, best(world));
    assertThat(left.boxes()).containsExactly(new BoxFill.Fill(BoxFill.Unit.PIECES, 4, 6));
    assertThat(left.verdict()).isEqualTo(BoxRoom.Verdict.NOTHING);
    assertThat(packs(left)).containsExactly(1);
    assertThat(left.addition().get(0).difference().found()).isEqualTo(Money.of(-1));
    assertThat(left(IDLE, world, best(world)).verdict()).isEqualTo(BoxRoom.Verdict.NOTHING);
  }

  /** A pup that no animal here takes costs less than a fifth mouse; it is no advice. */
  @Test
  void what_nobody_eats_is_not_told_as_worth_adding() {
    World world = world(SINGLES + "Pup,mouse,pinky,2,2,2,1,0.10\n", Boxing.Way.BY_TOTAL, 3);
    BoxRoom.Left left = left(engine, world, best(world));
    assertThat(left.verdict()).isEqualTo(BoxRoom.Verdict.NOTHING);
    assertThat(left.addition()).isEmpty();
  }

  /**
   * The plan shown was made with boxes of one piece: four orders of 11.00. With three more mice in
   * the first box, which holds four, the others are not placed: 14.00, so 30.00 are saved.
   */
  @Test
  void what_makes_later_orders_needless_is_worth_adding() {
    World small =
        world(SINGLES, Boxing.Way.BY_TOTAL, 1)
            .withPledges(
                List.of(
                    new Pledge(
                        "carrier", Set.of("Mouse x1"), Period.ALWAYS, Pledge.Packs.atLeast(4), 1)));
    Answer.WithPlan shown = new Answer.BestFound(best(small).plan(), OptionalDouble.empty());
    assertThat(shown.plan().plan().orders()).hasSize(4);
    World world = world(SINGLES, Boxing.Way.BY_TOTAL, 4);

    BoxRoom.Left left = left(engine, world, shown);
    assertThat(left.verdict()).isEqualTo(BoxRoom.Verdict.SAVES);
    assertThat(packs(left)).containsExactly(3);
    assertThat(left.addition().get(0).difference().found()).isEqualTo(Money.of(30));
    assertThat(left(IDLE, world, shown).verdict()).isEqualTo(BoxRoom.Verdict.CANNOT_TELL);
  }

  /** Two pairs fill two boxes of three but for a piece each. */
  @Test
  void a_pack_that_is_never_cut_may_not_fit_into_the_room_that_is_left() {
    World whole = world(PAIRS, Boxing.Way.WHOLE_PACKS, 3);
    BoxRoom.Left left = left(engine, whole, best(whole));
    assertThat(left.boxes()).containsExactly(new BoxFill.Fill(BoxFill.Unit.PIECES, 4, 6));
    assertThat(left.verdict()).isEqualTo(BoxRoom.Verdict.NO_PACK_FITS);

    World total = world(PAIRS, Boxing.Way.BY_TOTAL, 3);
    assertThat(packs(left(engine, total, best(total)))).containsExactly(1);
  }

  @Test
  void what_is_fetched_has_no_boxes() {
    World shop = new OneMouseShop(SINGLES, new OneMouseShop.Keeping(60, 10)).world(folder);
    assertThat(new FillBoxes(engine).of(new Solved(shop, best(shop)), LIMITS, Watch.NONE))
        .isEmpty();
  }
}
