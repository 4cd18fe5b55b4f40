package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A mouse at 2.00 on each of days 1 and 2, from a source that delivers on the day. A night in the
 * freezer costs 0.30 a piece: two orders come to 4.00, one order for both days to 4.30.
 */
class ChangedDueSoonTest {
  private static final Policy.Charges A_NIGHT =
      new Policy.Charges(Money.of("0.30"), Money.ZERO, Money.ZERO, Money.ZERO);
  private final World world =
      new SmallWorld(2, SmallSupplier.selling(SINGLE))
          .charges(A_NIGHT)
          .need(1, 1)
          .need(2, 1)
          .world();

  private DueSoon.Due singles(int orderDay, int packs) {
    Slot slot = new ByHand(world).slot(orderDay);
    return new DueSoon.Due(slot, new TreeMap<>(Map.of(SINGLE.id(), packs)));
  }

  /** Due soon is what is dated up to a day. */
  private World after(int lastDay, String charge, DueSoon.Due... orders) {
    Period soon = new Period(day(1), day(lastDay));
    return world.withDueSoon(new DueSoon(soon, Arrays.asList(orders), Money.of(charge)));
  }

  /** The best plan; the program by itself comes to the same. */
  private static Answer.Judged optimum(World world) {
    Answer.Judged best = best(world);
    assertThat(LevelByLevel.comesTo(Optional.of(best.standing()), world, rule -> true)).isTrue();
    return best;
  }

  private static ByHand once(World world) {
    return new ByHand(world).order(1, packs(SINGLE, 2)).eat("day 1", "O1").eat("day 2", "O1");
  }

  private static ByHand twice(World world) {
    return new ByHand(world)
        .order(1, packs(SINGLE, 1))
        .order(2, packs(SINGLE, 1))
        .eat("day 1", "O1")
        .eat("day 2", "O2");
  }

  /** Two orders in place of one save 0.30 and are two changes: one changed, one added. */
  @Test
  void an_order_stays_up_to_the_threshold_and_changes_one_cent_beyond() {
    assertThat(optimum(after(2, "0.16", singles(1, 2))).standing()).isEqualTo(costs("4.30"));
    assertThat(optimum(after(2, "0.15", singles(1, 2))).standing()).isEqualTo(costs("4.30"));
    Answer.Judged changed = optimum(after(2, "0.14", singles(1, 2)));
    assertThat(changed.standing()).isEqualTo(costs("4.28"));
    assertThat(changed.plan().orders()).hasSize(2);
  }

  /** The added one is dated on day 2: then only the changed one counts. */
  @Test
  void an_order_that_is_not_due_soon_may_be_added() {
    assertThat(optimum(after(1, "0.31", singles(1, 2))).standing()).isEqualTo(costs("4.30"));
    assertThat(optimum(after(1, "0.29", singles(1, 2))).standing()).isEqualTo(costs("4.29"));
  }

  /** One dropped, one changed. */
  @Test
  void an_order_is_dropped_only_where_that_saves_more() {
    allowed(once(after(2, "1.00", singles(1, 1), singles(2, 1))), "6.30");
    assertThat(optimum(after(2, "1.00", singles(1, 1), singles(2, 1))).standing())
        .isEqualTo(costs("4"));
  }

  /** Three mice too many cost 6.00, and 0.90 for a night: they may be thrown away on day 2. */
  @Test
  void more_than_could_be_eaten_is_kept_where_that_is_less_than_the_charge() {
    assertThat(optimum(after(2, "100", singles(1, 5))).standing()).isEqualTo(costs("11.20"));
    assertThat(optimum(after(2, "3.00", singles(1, 5))).standing()).isEqualTo(costs("7.30"));
  }

  @Test
  void an_order_that_cannot_be_placed_any_more_is_charged_whatever_is_done() {
    World gone = after(2, "1.00", singles(1, 1));
    World later = gone.withSlots(List.of(new ByHand(gone).slot(2)));
    assertThat(optimum(later).standing()).isEqualTo(unmet(1, "4"));
  }

  @Test
  void what_is_changed_or_added_is_charged_and_what_stays_is_not() {
    allowed(twice(after(2, "1.00", singles(1, 1), singles(2, 1))), "4");
    allowed(twice(after(2, "1.00", singles(1, 1))), "5");
    allowed(twice(after(2, "1.00", singles(1, 2), singles(2, 1))), "5");
    allowed(once(after(1, "1.00", singles(1, 2))), "4.30");
  }

  @Test
  void without_an_earlier_plan_nothing_is_charged() {
    assertThat(optimum(world).standing()).isEqualTo(costs("4"));
  }
}
