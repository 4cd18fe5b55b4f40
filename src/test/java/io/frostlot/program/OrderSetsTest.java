package io.frostlot.program;

import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** By hand: two suppliers that come every day for thirty days, and values that are made up. */
final class OrderSetsTest {
  private static final int COUNT = 12;
  private static final double LOST_A_MEAL = 1000;

  private final World world =
      new SmallWorld(30, SmallSupplier.named("a", SINGLE), SmallSupplier.named("b", SINGLE))
          .need(20, 1)
          .world();
  private final List<Set<Slot>> looked = new ArrayList<>();
  private final List<Set<Slot>> closely = new ArrayList<>();

  private OrderSets sets(ToDoubleFunction<Collection<Slot>> relaxed) {
    return sets(relaxed, slots -> OptionalDouble.empty());
  }

  private OrderSets sets(
      ToDoubleFunction<Collection<Slot>> relaxed,
      Function<Collection<Slot>, OptionalDouble> closer) {
    return new OrderSets(
        world,
        new OrderSets.Values() {
          @Override
          public double relaxed(Collection<Slot> slots) {
            looked.add(Set.copyOf(slots));
            return relaxed.applyAsDouble(slots);
          }

          @Override
          public OptionalDouble closer(Collection<Slot> slots) {
            closely.add(Set.copyOf(slots));
            return closer.apply(slots);
          }
        });
  }

  private Slot slot(String supplier, int day) {
    return world.slots().stream()
        .filter(it -> it.supplier().equals(supplier))
        .filter(it -> it.arrivesEarliest().equals(SmallWorld.day(day)))
        .findFirst()
        .orElseThrow();
  }

  private SortedSet<Slot> set(Slot... slots) {
    return new TreeSet<>(List.of(slots));
  }

  @Test
  void looksAtTheDatesNextToTheBestSetFirst() {
    OrderSets sets = sets(slots -> 100);
    sets.look(set(slot("a", 10), slot("b", 20)));

    sets.expand(COUNT);

    assertThat(looked)
        .contains(
            set(slot("a", 9), slot("b", 20)),
            set(slot("a", 11), slot("b", 20)),
            set(slot("a", 10), slot("b", 19)),
            set(slot("a", 10), slot("b", 21)));
  }

  @Test
  void looksAtEachSetNextToOneOnce() {
    SortedSet<Slot> from = set(slot("a", 10), slot("b", 20));
    OrderSets sets = sets(slots -> from.containsAll(slots) && slots.size() == 2 ? 100 : 200);

    List<SortedSet<Slot>> near = new NearbySets(world).of(from, Chance.of(1));
    sets.look(from);
    sets.solved(from, 110, from);
    for (int i = 0; i * COUNT < near.size(); i++) {
      sets.expand(COUNT);
    }

    // by 1, 2, 4 and 8 days each way: 16; one left out: 2; one of the other on its day: 2
    assertThat(near).hasSize(20).doesNotHaveDuplicates().doesNotContain(from);
    assertThat(looked).doesNotHaveDuplicates().containsAll(near);
  }

  @Test
  void neitherEndsBeforeTheFirstDateNorAfterTheLast() {
    SortedSet<Slot> from = set(slot("a", 1), slot("b", 30));

    List<SortedSet<Slot>> near = new NearbySets(world).of(from, Chance.of(1));

    assertThat(near).allMatch(set -> !set.isEmpty() && world.slots().containsAll(set));
    assertThat(near).contains(set(slot("a", 9), slot("b", 30)), set(slot("a", 1), slot("b", 22)));
  }

  @Test
  void looksNextToThoseDeliveriesThatAPlanHas() {
    SortedSet<Slot> larger = set(slot("a", 10), slot("b", 14), slot("b", 20));
    SortedSet<Slot> used = set(slot("a", 10), slot("b", 20));
    OrderSets sets = sets(slots -> 100);
    sets.look(larger);
    sets.solved(larger, 110, used);
    assertThat(looked).contains(used);
    looked.clear();

    sets.expand(COUNT);

    assertThat(looked).hasSize(COUNT).allMatch(set -> set.size() <= used.size());
    assertThat(sets.nextToSolve(List.of(used, larger))).hasValue(used);
  }

  @Test
  void aSetThatLostAMealMakesOthersNoDearer() {
    SortedSet<Slot> best = set(slot("a", 10));
    SortedSet<Slot> unlucky = set(slot("b", 20));
    SortedSet<Slot> open = set(slot("a", 25));
    OrderSets sets = sets(slots -> slots.containsAll(open) ? 95 : 100);
    for (SortedSet<Slot> some : List.of(best, unlucky, open)) {
      sets.look(some);
    }
    sets.solved(best, 110, best);
    sets.solved(unlucky, 100 + LOST_A_MEAL, unlucky);
    looked.clear();

    // 95 and the usual ten more are less than 110
    sets.expand(1);

    assertThat(looked).singleElement().satisfies(set -> assertThat(beside(open, set)).isTrue());
  }

  private static boolean beside(Set<Slot> one, Set<Slot> other) {
    Slot first = one.iterator().next();
    return other.stream()
        .anyMatch(
            slot ->
                Math.abs(slot.arrivesEarliest().toEpochDay() - first.arrivesEarliest().toEpochDay())
                    <= 8);
  }

  @Test
  void theLowestOfTheOpenOnesIsSolvedNext() {
    OrderSets sets = sets(slots -> slots.contains(slot("b", 7)) ? 90 : 100);
    sets.look(set(slot("a", 3)));
    sets.look(set(slot("b", 7)));

    assertThat(sets.nextToSolve(Double.POSITIVE_INFINITY)).hasValue(set(slot("b", 7)));
    sets.solved(set(slot("b", 7)), 120, set(slot("b", 7)));
    assertThat(sets.nextToSolve(Double.POSITIVE_INFINITY)).hasValue(set(slot("a", 3)));
    assertThat(sets.nextToSolve(100)).isEmpty();
  }

  @Test
  void whatPromisesLessAtACloserLookWaits() {
    SortedSet<Slot> first = set(slot("a", 1));
    SortedSet<Slot> lowest = set(slot("a", 3));
    SortedSet<Slot> other = set(slot("b", 7));
    OrderSets sets =
        sets(
            slots -> slots.contains(slot("a", 3)) ? 90 : 100,
            slots -> OptionalDouble.of(slots.contains(slot("a", 3)) ? 130 : 115));
    List.of(first, lowest, other).forEach(sets::look);
    sets.solved(first, 140, first);

    assertThat(sets.nextToSolve(Double.POSITIVE_INFINITY)).hasValue(lowest);
    assertThat(closely).containsExactly(lowest);
    sets.look(set(slot("b", 8)));
    sets.solved(lowest, 135, lowest);

    // 115 was found for it, and the next one, 100 and a quarter of the lifts, is no less
    assertThat(sets.nextToSolve(Double.POSITIVE_INFINITY)).isPresent();
    assertThat(closely).doesNotHaveDuplicates().hasSizeGreaterThan(1);
    assertThat(sets.nextToSolve(115)).isEmpty();
  }
}
