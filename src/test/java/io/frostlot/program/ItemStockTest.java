package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What may be eaten of a stock, compared with matchings of pieces and mouths, found by augmenting
 * paths (C. Berge, Proceedings of the National Academy of Sciences 43, 1957): a piece goes to a
 * mouth on a day on which it is there.
 */
final class ItemStockTest {
  private static final int DAYS = 9;
  private static final int WORLDS = 400;
  private static final ItemStock.Looked LOOKED = new ItemStock.Looked(new int[0], new int[0]);
  private static final LookDays LOOK =
      new LookDays(LocalDate.of(2031, 3, 3), DAYS, DAYS - 1, new int[] {0}, false, new int[0], 0);

  /** A stock at random, and its pieces one by one. */
  private static final class Some {
    private final List<ItemStock.Stay> pieces = new ArrayList<>();
    private final int[] eaten = new int[DAYS];
    private final ItemStock stock = new ItemStock(LOOK, 1);
    private final Random random;

    Some(long seed) {
      random = new Random(seed);
      for (int batch = 0; batch < 3; batch++) {
        int from = random.nextInt(DAYS) - 2;
        ItemStock.Stay stay =
            new ItemStock.Stay(from, from, from, Math.max(0, from) + random.nextInt(5));
        int count = random.nextInt(4);
        stock.put(stock.add(new ItemStock.Batch(stay, 0, true)), count);
        for (int n = 0; n < count; n++) {
          pieces.add(stay);
        }
      }
    }

    private void eat(int day, int count) {
      eaten[day] += count;
      stock.eat(day, count);
    }

    /** Does every mouth get a piece, so many more on a day among them? */
    private boolean isEnough(int day, int more) {
      List<Integer> mouths = new ArrayList<>();
      for (int d = 0; d < DAYS; d++) {
        for (int n = 0; n < eaten[d] + (d == day ? more : 0); n++) {
          mouths.add(d);
        }
      }
      int[] mouthOf = new int[pieces.size()];
      Arrays.fill(mouthOf, -1);
      for (int mouth = 0; mouth < mouths.size(); mouth++) {
        if (!feeds(mouth, mouths, mouthOf, new boolean[pieces.size()])) {
          return false;
        }
      }
      return true;
    }

    private boolean feeds(int mouth, List<Integer> mouths, int[] mouthOf, boolean[] seen) {
      int day = mouths.get(mouth);
      for (int p = 0; p < mouthOf.length; p++) {
        boolean there = pieces.get(p).from() <= day && day <= pieces.get(p).until();
        if (there && !seen[p]) {
          seen[p] = true;
          if (mouthOf[p] < 0 || feeds(mouthOf[p], mouths, mouthOf, seen)) {
            mouthOf[p] = mouth;
            return true;
          }
        }
      }
      return false;
    }

    private int most(int day) {
      int more = 0;
      while (isEnough(day, more + 1)) {
        more++;
      }
      return more;
    }

    /** At random, as long as there is enough. */
    private void eatSome() {
      for (int n = 0; n < 5; n++) {
        int day = random.nextInt(DAYS);
        if (isEnough(day, 1)) {
          eat(day, 1);
        }
      }
    }
  }

  @Test
  void there_is_enough_where_each_mouth_can_have_a_piece_of_its_own() {
    for (long seed = 0; seed < WORLDS; seed++) {
      Some some = new Some(seed);
      for (int n = 0; n < 6; n++) {
        some.eat(some.random.nextInt(DAYS), 1);
        boolean enough = some.isEnough(0, 0);
        assertThat(some.stock.lackingOn() < 0).as("seed %d", seed).isEqualTo(enough);
        assertThat(some.stock.walk(LOOKED).isLacking()).as("seed %d", seed).isEqualTo(!enough);
      }
    }
  }

  @Test
  void what_may_be_eaten_more_on_a_day_is_never_told_too_low() {
    for (long seed = 0; seed < WORLDS; seed++) {
      Some some = new Some(seed);
      some.eatSome();
      int[] spare = some.stock.walk(LOOKED).spare().on();
      for (int day = 0; day < DAYS; day++) {
        assertThat(spare[day])
            .as("seed %d, day %d", seed, day)
            .isGreaterThanOrEqualTo(some.most(day));
      }
    }
  }

  @Test
  void a_piece_eaten_leaves_at_most_one_fewer_on_any_day() {
    for (long seed = 0; seed < WORLDS; seed++) {
      Some some = new Some(seed);
      some.eatSome();
      int[] before = new int[DAYS];
      Arrays.setAll(before, some::most);
      int day = some.random.nextInt(DAYS);
      if (before[day] > 0) {
        some.eat(day, 1);
        for (int other = 0; other < DAYS; other++) {
          assertThat(some.most(other))
              .as("seed %d, day %d", seed, other)
              .isGreaterThanOrEqualTo(before[other] - 1);
        }
      }
    }
  }
}
