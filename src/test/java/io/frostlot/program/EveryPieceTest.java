package io.frostlot.program;

import static io.frostlot.program.ByHand.boxes;
import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Delivery;
import io.frostlot.units.Litres;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EveryPieceTest {
  private static final String RULE = "every-piece";

  private static Lot holding(Lot lot, int pieces) {
    return new Lot(
        lot.id(),
        lot.item(),
        pieces,
        lot.freezer(),
        lot.earliest(),
        lot.latest(),
        lot.useBy(),
        lot.origin());
  }

  /** Three in hand: three meals cost nothing, the fourth a piece at 2.00. */
  @Test
  void no_more_is_eaten_than_is_there() {
    SmallWorld three = new SmallWorld(1).stock("S", 3, 9).need(1, 3);
    allowed(new ByHand(three.world()).eat("day 1", "S"), "0");
    assertThat(optimum(three)).isEqualTo(costs("0"));
    SmallWorld four = new SmallWorld(1, SmallSupplier.selling(SINGLE)).stock("S", 3, 9).need(1, 4);
    refused(new ByHand(four.world()).eat("day 1", "S"), RULE);
    assertThat(optimum(four)).isEqualTo(costs("2"));
  }

  /** Two are under way, and the only freezer takes no new prey. */
  @Test
  void what_may_lie_nowhere_cannot_come() {
    Freezer closed =
        new Freezer(
            "A", Litres.of(BigDecimal.TEN), "household", Freezer.Life.of(9), /* inUse= */ false);
    SmallWorld world = new SmallWorld(2, SmallSupplier.selling(SINGLE)).freezers(closed).need(1, 1);
    assertThat(Engine.solve(world.world(), Limits.ofSeconds(30), Watch.NONE))
        .isInstanceOf(Answer.Proven.class);
    World coming = world.placed(new PlacedLot("P", MOUSE, 2, day(1), day(1))).world();
    assertThat(Engine.solve(coming, Limits.ofSeconds(30), Watch.NONE))
        .isInstanceOf(Answer.Impossible.class);
  }

  private static SmallWorld mayComeLate(int mealDay) {
    Delivery uncertain =
        new Delivery.Shipped(
            new Delivery.Lead(0, false, 0, List.of()),
            Set.of(DayOfWeek.WEDNESDAY),
            new Delivery.Transit(1, 3));
    return new SmallWorld(4, SmallSupplier.selling(SINGLE).delivery(uncertain)).need(mealDay, 1);
  }

  private static ByHand sentOnDayOne(SmallWorld world) {
    return new ByHand(world.world()).sent(1, boxes(1), packs(SINGLE, 1));
  }

  /** Sent on day 1, it comes on day 2, 3 or 4. */
  @Test
  void what_is_sent_is_eaten_once_it_has_surely_come() {
    allowed(sentOnDayOne(mayComeLate(4)).eat("day 4", "O1"), "2");
    assertThat(optimum(mayComeLate(4))).isEqualTo(costs("2"));
    refused(sentOnDayOne(mayComeLate(3)).eat("day 3", "O1"), RULE);
    assertThat(optimum(mayComeLate(3))).isEqualTo(unmet(1, "0"));
  }

  @ParameterizedTest(name = "a meal on day {0}: {1} not met")
  @CsvSource({"2, 1", "3, 0"})
  void what_is_under_way_is_eaten_once_it_has_surely_come(int mealDay, int notMet) {
    SmallWorld world =
        new SmallWorld(3).placed(new PlacedLot("P", MOUSE, 1, day(1), day(3))).need(mealDay, 1);
    ByHand plan = new ByHand(world.world()).eat("day " + mealDay, "P");
    if (notMet == 0) {
      allowed(plan, "0");
    } else {
      refused(plan, RULE);
    }
    assertThat(optimum(world)).isEqualTo(unmet(notMet, "0"));
  }

  @Test
  void every_piece_that_comes_lies_in_a_lot() {
    SmallWorld world = new SmallWorld(1, SmallSupplier.selling(SINGLE)).stock("S", 3, 9).need(1, 1);
    ByHand bought = new ByHand(world.world()).order(1, packs(SINGLE, 2)).eat("day 1", "O1");
    allowed(bought, "4");
    refused(bought.put(holding(bought.lot("O1"), 1)), RULE);
    refused(bought.put(holding(bought.lot("O1"), 3)), RULE);
    ByHand inHand = new ByHand(world.world()).eat("day 1", "S");
    refused(inHand.put(holding(inHand.lot("S"), 4)), RULE);
  }

  @Test
  void a_meal_takes_its_pieces_from_lots() {
    SmallWorld world = new SmallWorld(1).stock("S", 3, 9).stock("T", 3, 9).need(1, 4);
    Option one = new Option(MOUSE, 1);
    Feeding.Draw all = new Feeding.Draw("S", 3);
    ByHand plan = new ByHand(world.world());
    allowed(
        plan.eat(new Feeding("day 1", day(1), one, 4, List.of(all, new Feeding.Draw("T", 1)))),
        "0");
    refused(
        new ByHand(world.world()).eat(new Feeding("day 1", day(1), one, 4, List.of(all))), RULE);
    refused(
        new ByHand(world.world())
            .eat(new Feeding("day 1", day(1), one, 4, List.of(all, new Feeding.Draw("U", 1)))),
        RULE);
  }

  @Test
  void what_is_in_hand_may_be_thrown_away_from_the_first_day_on() {
    SmallWorld world = new SmallWorld(2).stock("S", 3, 9).need(2, 1);
    allowed(new ByHand(world.world()).discard("S", 1, 2).eat("day 2", "S"), "0");
    refused(new ByHand(world.world()).discard("S", 1, 3).eat("day 2", "S"), RULE);
  }

  /** A delivery is put away whole on its day. */
  @Test
  void what_is_ordered_may_be_thrown_away_from_the_next_day_on() {
    SmallWorld world = new SmallWorld(3, SmallSupplier.selling(SINGLE)).need(3, 1);
    ByHand early = new ByHand(world.world()).order(1, packs(SINGLE, 2));
    refused(early.discard("O1", 1, 1).eat("day 3", "O1"), RULE);
    ByHand next = new ByHand(world.world()).order(1, packs(SINGLE, 2));
    allowed(next.discard("O1", 2, 1).eat("day 3", "O1"), "4");
  }
}
