package io.frostlot.program;

import static io.frostlot.program.ByHand.boxes;
import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ten mice in a pack: 250 g, 10 litres, 20.00. The first box is 29.00, each further one 10.00;
 * whichever limit binds, a box takes four packs.
 */
class BoxesByTotalTest {
  private static final String RULE = "boxes";
  private static final Pack TEN = pack(MOUSE, 10, "20.00");
  private static final Boxing.Limits PIECES =
      new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 40);
  private static final Shipping RATE =
      new Shipping(
          new Shipping.Rate(Money.ZERO, Money.of(29), Money.of(10)),
          Shipping.Packing.FREE,
          List.of(),
          List.of());

  /** By mass, by room, by pieces, and by mass where all are stated. */
  static Stream<Boxing.Limits> limits() {
    return Stream.of(
        limits(1000, Litres.UNLIMITED, Pack.UNLIMITED),
        new Boxing.Limits(Grams.UNLIMITED, litres(40), Pack.UNLIMITED),
        PIECES,
        limits(1000, litres(60), 50));
  }

  private static Boxing.Limits limits(int grams, Litres litres, int pieces) {
    return new Boxing.Limits(Grams.of(grams), litres, pieces);
  }

  private static Litres litres(int litres) {
    return Litres.of(BigDecimal.valueOf(litres));
  }

  private static SmallWorld world(int days, int mostBoxes, Boxing.Limits limits) {
    Boxing boxing = new Boxing(Boxing.Way.BY_TOTAL, limits, mostBoxes);
    return new SmallWorld(days, SmallSupplier.selling(TEN).boxing(boxing).shipping(RATE));
  }

  /** Forty are four packs in one box: 80.00 + 29.00. */
  @ParameterizedTest
  @MethodSource("limits")
  void a_box_is_filled_to_its_limit(Boxing.Limits limits) {
    SmallWorld world = world(1, 9, limits).need(1, 40);
    ByHand one = new ByHand(world.world()).sent(1, boxes(1), packs(TEN, 4));
    allowed(one.eat("day 1", "O1"), "109");
    refused(new ByHand(world.world()).sent(1, boxes(2), packs(TEN, 4)), RULE);
    assertThat(optimum(world)).isEqualTo(costs("109"));
  }

  /** Forty-one are five packs, which take a second box: 100.00 + 29.00 + 10.00. */
  @ParameterizedTest
  @MethodSource("limits")
  void a_pack_more_takes_another_box(Boxing.Limits limits) {
    SmallWorld world = world(1, 9, limits).need(1, 41);
    refused(new ByHand(world.world()).sent(1, boxes(1), packs(TEN, 5)), RULE);
    ByHand two = new ByHand(world.world()).sent(1, boxes(2), packs(TEN, 5));
    allowed(two.eat("day 1", "O1"), "139");
    assertThat(optimum(world)).isEqualTo(costs("139"));
  }

  /** With one box an order, forty-one are not to be had on one day: 80.00 + 29.00. */
  @Test
  void no_more_boxes_than_the_supplier_sends() {
    SmallWorld world = world(1, 1, PIECES).need(1, 41);
    refused(new ByHand(world.world()).sent(1, boxes(2), packs(TEN, 5)), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(1, "109"));
  }

  /** On two days one box each: 100.00 + 2 x 29.00. */
  @Test
  void what_one_order_cannot_take_is_ordered_on_another_day() {
    SmallWorld world = world(2, 1, PIECES).need(2, 41);
    assertThat(optimum(world)).isEqualTo(costs("158"));
  }

  /** Three packs of ten in boxes of fifteen pieces are two boxes: 60.00 + 39.00. */
  @Test
  void a_pack_may_be_cut_across_boxes() {
    Boxing.Limits fifteen = new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 15);
    SmallWorld world = world(1, 9, fifteen).need(1, 30);
    ByHand two = new ByHand(world.world()).sent(1, boxes(2), packs(TEN, 3));
    allowed(two.eat("day 1", "O1"), "99");
    assertThat(optimum(world)).isEqualTo(costs("99"));
  }

  @Test
  void what_is_fetched_has_no_box() {
    SmallWorld world = new SmallWorld(1, SmallSupplier.selling(TEN)).need(1, 10);
    allowed(new ByHand(world.world()).order(1, packs(TEN, 1)).eat("day 1", "O1"), "20");
    refused(new ByHand(world.world()).sent(1, boxes(1), packs(TEN, 1)), RULE);
  }
}
