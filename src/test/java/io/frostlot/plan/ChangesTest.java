package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ChangesTest {
  private static final LocalDate DAY = LocalDate.parse("2031-01-07");

  private static Outline.Ordered order(String supplier, int packs) {
    return new Outline.Ordered(
        supplier,
        DAY,
        DAY.plusDays(2),
        new TreeMap<>(Map.of("Hopper x25", packs)),
        Money.of(10L * packs));
  }

  private static Outline outline(
      String digest, String cost, List<Outline.Ordered> orders, String... unmet) {
    return new Outline(
        digest,
        new Outline.Totals(Money.of(cost), Money.of(cost)),
        orders,
        List.of(unmet).stream().map(animal -> new Outline.Unmet(animal, DAY)).toList());
  }

  @Test
  void a_plan_does_not_differ_from_itself() {
    Outline outline = outline("a", "10", List.of(order("hillside", 1)), "Bark");
    assertThat(Changes.between(outline, outline).isEmpty()).isTrue();
    assertThat(Changes.between(outline, outline).stale()).isFalse();
  }

  @Test
  void only_differences_are_named() {
    Outline before =
        outline(
            "a",
            "60",
            List.of(order("corner", 1), order("fair", 2), order("hillside", 3)),
            "Amber",
            "Bark");
    Outline after =
        outline(
            "b",
            "70",
            List.of(order("fair", 2), order("hillside", 4), order("valley", 1)),
            "Bark",
            "Cinder");
    Changes changes = Changes.between(before, after);

    assertThat(changes.stale()).isTrue();
    assertThat(changes.nowMet()).containsExactly(new Outline.Unmet("Amber", DAY));
    assertThat(changes.nowUnmet()).containsExactly(new Outline.Unmet("Cinder", DAY));
    assertThat(changes.orders())
        .containsExactly(
            new Changes.Dropped(order("corner", 1)),
            new Changes.Changed(order("hillside", 3), order("hillside", 4)),
            new Changes.Added(order("valley", 1)));
    assertThat(changes.costs().before().cost()).isEqualTo(Money.of(60));
    assertThat(changes.isEmpty()).isFalse();
  }

  /** Both cost 103.215; a habit's best is neither below its own bound nor below the plan's. */
  @Test
  void what_a_habit_costs_more_lies_between_bound_and_cost() {
    World world = HandmadeRoom.world();
    Answer.WithPlan shown =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(100));
    Answer.WithPlan habit =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(101));
    Answer.WithPlan unbounded =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.empty());
    Answer.WithPlan proven = new Answer.Proven(HandmadePlan.judged(world), 103.215);
    assertThat(Interval.dearer(habit, shown).least().getAsDouble()).isCloseTo(-2.215, within(1e-9));
    assertThat(Interval.dearer(unbounded, shown).least().getAsDouble())
        .isCloseTo(-3.215, within(1e-9));
    assertThat(Interval.dearer(unbounded, unbounded).least()).isEmpty();
    assertThat(Interval.dearer(unbounded, proven).least().getAsDouble()).isZero();
    assertThat(Interval.dearer(habit, shown).most()).hasValue(0);
  }

  @Test
  void what_lies_infinitely_far_is_not_known() {
    Interval half = Interval.between(Double.NEGATIVE_INFINITY, 3);

    assertThat(half.least()).isEmpty();
    assertThat(half.most()).hasValue(3);
    assertThat(half.holdsZero()).isTrue();
  }
}
