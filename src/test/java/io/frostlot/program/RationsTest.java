package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class RationsTest {
  private static final int LIGHT = 0;
  private static final int HEAVY = 1;

  /** All meals in a row, held to 97 to 105 percent of twelve grams each. */
  private static Rations.Run run(Integer... meals) {
    double programme = 12.0 * meals.length;
    return new Rations.Run(
        List.of(meals), new RunBand(programme, 0.97 * programme, 1.05 * programme));
  }

  /** Ten or fourteen grams on a day, now from one of the two shelves. */
  private static Rations.Meal meal(int day, int now) {
    return new Rations.Meal(
        List.of(new Rations.Way(LIGHT, 1, day, 10), new Rations.Way(HEAVY, 1, day, 14)),
        12,
        true,
        now);
  }

  private static StockLevels.Batch batch(int pieces, int from, int until) {
    return new StockLevels.Batch(pieces, from, until, new StockLevels.Place(0, from, 1), List.of());
  }

  private static StockLevels stock(
      double room, List<StockLevels.Batch> light, StockLevels.Batch heavy) {
    return new StockLevels(
        List.of(light, List.of(heavy)), new int[] {0, 7}, new double[][] {{room, room}});
  }

  /**
   * One animal has the light pieces, the other the heavy ones: 16.7 and 16.7 percent, of which 13.7
   * and 11.7 lie outside. Two of each are 48 of 48 grams.
   */
  @Test
  void two_animals_exchange_until_both_have_their_share() {
    List<Rations.Meal> meals = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      meals.add(meal(7 * (i % 4), i < 4 ? LIGHT : HEAVY));
    }
    Rations rations =
        new Rations(
            meals,
            List.of(run(0, 1, 2, 3), run(4, 5, 6, 7)),
            stock(8, List.of(batch(4, 0, 30)), batch(4, 0, 30)),
            new int[2][31]);
    assertThat(rations.off())
        .isCloseTo(100 * (0.97 - 40 / 48.0) + 100 * (56 / 48.0 - 1.05), within(1e-9));
    assertThat(rations.improve(1_000_000)).isTrue();
    assertThat(rations.off()).isCloseTo(0, within(1e-9));
    assertThat(IntStream.range(0, 8).filter(m -> rations.way(m) == LIGHT)).hasSize(4);
  }

  /** The light pieces that would do come a day too late for the first meal. */
  @Test
  void nobody_eats_what_is_not_there_yet() {
    Rations rations =
        new Rations(
            List.of(meal(0, HEAVY), meal(7, HEAVY)),
            List.of(run(0), run(1)),
            stock(9, List.of(batch(2, 1, 30)), batch(4, 0, 30)),
            new int[2][31]);
    rations.improve(1_000_000);
    assertThat(rations.way(0)).isEqualTo(HEAVY);
  }

  /** An unmet meal is served before anything else counts, and others keep what they eat. */
  @Test
  void unmet_meals_come_first_and_others_keep_theirs() {
    int[][] others = new int[2][31];
    others[LIGHT][3] = 1;
    Rations rations =
        new Rations(
            List.of(meal(2, -1), meal(2, -1)),
            List.of(run(0, 1)),
            stock(9, List.of(batch(2, 0, 30)), batch(0, 0, 30)),
            others);
    assertThat(rations.improve(1000)).isTrue();
    assertThat(List.of(rations.way(0), rations.way(1))).containsExactlyInAnyOrder(LIGHT, -1);
  }

  /** The heavy piece must be gone on day 7, when one litre is all that there is. */
  @Test
  void a_freezer_that_is_full_stays_within_its_room() {
    StockLevels stock =
        new StockLevels(
            List.of(List.of(batch(1, 0, 30)), List.of(batch(1, 0, 30))),
            new int[] {0, 7},
            new double[][] {{2, 1}});
    Rations.Meal late = new Rations.Meal(List.of(new Rations.Way(LIGHT, 1, 9, 12)), 12, true, 0);
    Rations rations =
        new Rations(List.of(meal(2, HEAVY), late), List.of(run(0), run(1)), stock, new int[2][31]);
    rations.improve(1000);
    assertThat(rations.way(0)).isEqualTo(HEAVY);
    assertThat(stock.lacking()).isZero();
  }
}
