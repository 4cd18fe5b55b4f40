package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.plan.Order;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs of 6 mice, 4 rats and 5 chicks at 10.00 each, in boxes of 10 pieces at 20.00 each. */
class WholePacksTest {
  private static final String RULE = "whole-packs";
  private static final Item RAT = prey("Rat", "rat", 80);
  private static final Item CHICK = prey("Chick", "chick", 40);
  private static final Pack SIX = pack(MOUSE, 6, "10.00");
  private static final Pack FOUR = pack(RAT, 4, "10.00");
  private static final Pack FIVE = pack(CHICK, 5, "10.00");

  private static SmallSupplier supplier(int mostBoxes, Pack... packs) {
    Boxing.Limits ten = new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 10);
    Shipping.Rate rate = new Shipping.Rate(Money.ZERO, Money.of(20), Money.of(20));
    return SmallSupplier.selling(packs)
        .boxing(new Boxing(Boxing.Way.WHOLE_PACKS, ten, mostBoxes))
        .shipping(new Shipping(rate, Shipping.Packing.FREE, List.of(), List.of()));
  }

  private static SmallWorld world(int mostBoxes) {
    return new SmallWorld(1, supplier(mostBoxes, SIX, FOUR, FIVE));
  }

  private static Order.Boxes boxes(Order.Content... oneEach) {
    return new Order.Boxes(
        oneEach.length, List.of(oneEach).stream().map(content -> List.of(content)).toList());
  }

  private static Order.Content one(Pack pack) {
    return new Order.Content(pack, 1);
  }

  /** 6 + 4 fill a box exactly: 20.00 + 20.00. */
  @Test
  void packs_that_fill_a_box_exactly_go_into_one() {
    SmallWorld world = world(9).need(1, 6).need(RAT, 1, 4);
    Order.Boxes full = new Order.Boxes(1, List.of(List.of(one(SIX), one(FOUR))));
    ByHand plan = new ByHand(world.world()).sent(1, full, packs(SIX, 1), packs(FOUR, 1));
    allowed(plan.eat("day 1", "O1").eat("Rat day 1", "O2"), "40");
    assertThat(optimum(world)).isEqualTo(costs("40"));
  }

  /** 6 + 5 are one piece too many for a box: 20.00 + 2 x 20.00. */
  @Test
  void a_piece_too_many_takes_another_box() {
    SmallWorld world = world(9).need(1, 6).need(CHICK, 1, 5);
    Order.Boxes overfull = new Order.Boxes(1, List.of(List.of(one(SIX), one(FIVE))));
    refused(new ByHand(world.world()).sent(1, overfull, packs(SIX, 1), packs(FIVE, 1)), RULE);
    ByHand two =
        new ByHand(world.world())
            .sent(1, boxes(one(SIX), one(FIVE)), packs(SIX, 1), packs(FIVE, 1));
    allowed(two.eat("day 1", "O1").eat("Chick day 1", "O2"), "60");
    assertThat(optimum(world)).isEqualTo(costs("60"));
  }

  /** Three packs of six are 18 pieces, which two boxes would hold if packs were cut. */
  @Test
  void a_pack_is_never_cut() {
    SmallWorld world = world(9).need(1, 18);
    ByHand three =
        new ByHand(world.world()).sent(1, boxes(one(SIX), one(SIX), one(SIX)), packs(SIX, 3));
    allowed(three.eat("day 1", "O1"), "90");
    assertThat(optimum(world)).isEqualTo(costs("90"));
  }

  /** A pack of six is more than half of a box, so rows of the program alone say three boxes. */
  @Test
  void what_fills_more_than_half_of_a_box_is_a_box_in_the_program() {
    Model model = Rules.program(world(9).need(1, 18).world()).model();
    Linear money = model.objective(Level.MONEY);
    Model.Row allMet = Model.extra(0, model.objective(Level.UNMET_MUST), 0);
    Scip.End end =
        Scip.minimise(
            model, Scip.Task.of(money, List.of(allMet), false, Scip.Budget.ofMillis(600_000)));
    assertThat(money.at(end.point())).isCloseTo(90, within(1e-6));
  }

  /** Two boxes take twelve mice of eighteen: 2 x 10.00 + 2 x 20.00. */
  @Test
  void no_more_boxes_than_the_supplier_sends() {
    SmallWorld world = world(2).need(1, 18);
    refused(
        new ByHand(world.world()).sent(1, boxes(one(SIX), one(SIX), one(SIX)), packs(SIX, 3)),
        RULE);
    assertThat(optimum(world)).isEqualTo(unmet(6, "60"));
  }

  /**
   * Boxes of 1 kg and 10 litres: a pack of mice is 750 g and 3 l, one of rats 250 g and 6 l, one of
   * chicks 200 g and 8 l. Mice and rats share a box by both limits (1000 g, 9 l), mice and chicks
   * do not by room (11 l), rats and chicks neither (14 l), two of mice not by mass.
   */
  @Test
  void all_limits_hold_at_once() {
    Pack mice = packed(MOUSE, 750, 3);
    Pack rats = packed(RAT, 250, 6);
    Pack chicks = packed(CHICK, 200, 8);
    Boxing.Limits limits = new Boxing.Limits(Grams.of(1000), litres(10), Pack.UNLIMITED);
    Shipping.Rate rate = new Shipping.Rate(Money.ZERO, Money.of(20), Money.of(20));
    SmallSupplier source =
        SmallSupplier.selling(mice, rats, chicks)
            .boxing(new Boxing(Boxing.Way.WHOLE_PACKS, limits, 9))
            .shipping(new Shipping(rate, Shipping.Packing.FREE, List.of(), List.of()));
    assertThat(optimum(new SmallWorld(1, source).need(1, 1).need(RAT, 1, 1)))
        .isEqualTo(costs("40"));
    assertThat(optimum(new SmallWorld(1, source).need(1, 1).need(CHICK, 1, 1)))
        .isEqualTo(costs("60"));
    assertThat(optimum(new SmallWorld(1, source).need(1, 2))).isEqualTo(costs("60"));
    assertThat(optimum(new SmallWorld(1, source).need(1, 1).need(RAT, 1, 1).need(CHICK, 1, 1)))
        .isEqualTo(costs("70"));
  }

  private static Litres litres(int litres) {
    return new Litres(litres * 1_000_000L);
  }

  private static Pack packed(Item item, int grams, int litres) {
    return new Pack(
        item,
        1,
        Money.of(10),
        Pack.Availability.ANY,
        new Pack.Packed(Grams.of(grams), litres(litres)));
  }

  @Test
  void every_pack_is_listed_in_a_box_once() {
    ByHand plan = new ByHand(world(9).need(1, 12).world());
    refused(plan.sent(1, boxes(one(SIX)), packs(SIX, 2)), RULE);
    ByHand twice = new ByHand(world(9).need(1, 6).world());
    refused(twice.sent(1, boxes(one(SIX), one(SIX)), packs(SIX, 1)), RULE);
    ByHand unlisted = new ByHand(world(9).need(1, 6).world());
    refused(unlisted.sent(1, ByHand.boxes(1), packs(SIX, 1)), RULE);
  }

  /** Twelve in a pack go into no box of ten: nothing can be sent. */
  @Test
  void a_pack_larger_than_a_box_is_not_sent() {
    Pack twelve = pack(MOUSE, 12, "10.00");
    SmallWorld world = new SmallWorld(1, supplier(9, twelve)).need(1, 12);
    refused(new ByHand(world.world()).sent(1, boxes(one(twelve)), packs(twelve, 1)), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(12, "0"));
  }
}
