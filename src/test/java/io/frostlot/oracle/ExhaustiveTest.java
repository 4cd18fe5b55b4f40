package io.frostlot.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Replay;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The search that tries everything, held to published optima and to itself. */
class ExhaustiveTest {
  private static Money least(DailyShop shop) {
    return Exhaustive.best(shop.world()).orElseThrow().standing().money();
  }

  /**
   * H. M. Wagner, T. M. Whitin, "Dynamic Version of the Economic Lot Size Model", Management
   * Science 5(1), 1958, 89-96, the first two periods. By hand: 85 alone; 85 + 29 (a new order at
   * 102 is dearer).
   */
  @ParameterizedTest
  @CsvSource({"1, 85", "2, 114"})
  void wagner_and_whitin_1958(int periods, int least) {
    int[] demand = Arrays.copyOf(new int[] {69, 29}, periods);
    int[] charge = Arrays.copyOf(new int[] {85, 102}, periods);
    DailyShop.Store store = new DailyShop.Store(Pack.UNLIMITED, 1000, 0, Money.of(1));
    assertThat(least(new DailyShop(demand, Map.of(1, Money.ZERO), charge, store)))
        .isEqualTo(Money.of(least));
  }

  /**
   * W. L. Winston, "Introduction to Probability Models", 2004, chapter 6, example 4: at most 5 made
   * and 4 stored in a period.
   */
  @ParameterizedTest
  @CsvSource({"0, 20", "1, 16", "2, 15.5", "3, 15", "4, 13.5"})
  void winston_2004(int stock, String least) {
    DailyShop.Store store = new DailyShop.Store(5, 4, stock, Money.of("0.5"));
    int[] demand = {1, 3, 2, 4};
    int[] charge = {3, 3, 3, 3};
    assertThat(least(new DailyShop(demand, Map.of(1, Money.of(1)), charge, store)))
        .isEqualTo(Money.of(least));
  }

  /** Sylvester 1884: packs of 6, 9 and 20 make every number of pieces above 43, not 43. */
  @ParameterizedTest
  @CsvSource({"6, 6", "7, 9", "43, 44", "44, 44", "45, 45", "46, 46", "47, 47", "48, 48", "49, 49"})
  void coin_problem(int pieces, int least) {
    Map<Integer, Money> packs = Map.of(6, Money.of(6), 9, Money.of(9), 20, Money.of(20));
    DailyShop.Store store = new DailyShop.Store(Pack.UNLIMITED, 100, 0, Money.ZERO);
    assertThat(least(new DailyShop(new int[] {pieces}, packs, new int[] {0}, store)))
        .isEqualTo(Money.of(least));
  }

  @Test
  void the_best_plan_can_be_followed() {
    for (long seed = 0; seed < 100; seed++) {
      World world = TinyWorlds.of(seed);
      Exhaustive.best(world)
          .ifPresent(
              found ->
                  assertThat(Replay.of(world, found.plan()).breaches())
                      .as(world.scenario().name())
                      .isEmpty());
    }
  }

  @Test
  void eating_the_oldest_first_and_throwing_away_late_loses_nothing() {
    int compared = 0;
    for (long seed = 0; compared < 60; seed++) {
      World world = TinyWorlds.of(seed);
      if (world.slots().size() > 2 || world.items().size() > 2) {
        continue; // the longer search is for the smallest worlds
      }
      compared++;
      assertThat(Exhaustive.bestByAnyPiece(world).map(Exhaustive.Found::standing))
          .as(world.scenario().name())
          .isEqualTo(Exhaustive.best(world).map(Exhaustive.Found::standing));
    }
  }

  @Test
  void tiny_worlds_are_the_same_for_the_same_seed_and_differ_for_others() {
    assertThat(TinyWorlds.of(7)).isEqualTo(TinyWorlds.of(7)).isNotEqualTo(TinyWorlds.of(8));
  }

  @Test
  void most_tiny_worlds_have_a_plan_that_orders() {
    int ordering = 0;
    Standing worst = new Standing(0, 0, 0, Money.ZERO);
    for (long seed = 0; seed < 100; seed++) {
      var found = Exhaustive.best(TinyWorlds.of(seed));
      ordering += found.filter(f -> !f.plan().orders().isEmpty()).isPresent() ? 1 : 0;
      worst = found.map(Exhaustive.Found::standing).filter(s -> s.unmetOther() > 0).orElse(worst);
    }
    assertThat(ordering).isGreaterThan(40);
    assertThat(worst.unmetOther()).isPositive();
  }
}
