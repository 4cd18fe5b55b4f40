package io.frostlot.program;

import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.plan.Answer;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Compared with what is easily seen, and with every way of handing pieces out. */
final class AugmentingTest {
  private final SmallWorld world = new SmallWorld(8);

  private void stock(int grams, int pieces, int useBy) {
    Item item = prey("Mouse of " + grams + " g", "mouse", grams);
    world.stock(new StockLot("of " + grams, item, pieces, "A", day(-30), day(useBy)));
  }

  private void need(int least, int most, int day) {
    Meal.Days days = new Meal.Days(day(day), day(day), day(day));
    String label = least + " to " + most + " on day " + day;
    world.need(new Need(label, "mouse", Grams.of(least), Grams.of(most), 1, days));
  }

  /** Nobody is served. */
  private Trial trial() {
    TrialWorld trials = new TrialWorld(world.world());
    Answer.Judged any = new AtOnce(trials.world(), OptionalInt.of(1)).plan(List.of()).orElseThrow();
    Trial trial = TrialPlan.of(trials, any.plan()).orElseThrow().trial();
    for (int dish = 0; dish < trial.menu().dishes().size(); dish++) {
      trial.serve(dish, -1);
    }
    return trial;
  }

  private static void serve(Trial trial, int dish, int grams) {
    List<Menu.Way> ways = trial.menu().dishes().get(dish).ways();
    for (int way = 0; way < ways.size(); way++) {
      if (ways.get(way).option().grams().equals(Grams.of(grams))) {
        trial.serve(dish, way);
      }
    }
  }

  private static boolean feed(Trial trial, int dish) {
    Chance chance = Chance.of(1);
    return new Augmenting(trial, new Refilling(trial, chance), chance).feed(dish);
  }

  private static long gramsOf(Trial trial, int dish) {
    return trial.way(dish).option().grams().milligrams() / 1000;
  }

  @Test
  void food_is_passed_on_to_one_who_can_be_of_what_is_left() {
    List.of(20, 30, 40).forEach(grams -> stock(grams, 1, 8));
    need(15, 24, 3);
    need(15, 35, 3);
    need(25, 45, 3);
    Trial trial = trial();
    serve(trial, 1, 20);
    serve(trial, 2, 30);

    assertThat(feed(trial, 0)).isTrue();

    assertThat(gramsOf(trial, 0)).isEqualTo(20);
    assertThat(gramsOf(trial, 1)).isEqualTo(30);
    assertThat(gramsOf(trial, 2)).isEqualTo(40);
  }

  @Test
  void what_is_past_its_use_by_is_not_passed_on() {
    stock(20, 1, 4);
    stock(30, 1, 8);
    need(15, 35, 3);
    need(15, 24, 6);
    Trial trial = trial();
    serve(trial, 0, 20);

    assertThat(feed(trial, 1)).isFalse();

    assertThat(gramsOf(trial, 0)).isEqualTo(20);
  }

  @Test
  void as_many_are_fed_as_by_any_way_of_handing_out() {
    for (int seed = 0; seed < 30; seed++) {
      AugmentingTest one = new AugmentingTest();
      Random random = new Random(seed);
      for (int grams = 10; grams < 70; grams += 10) {
        one.stock(grams, 1, 8);
      }
      for (int n = 0; n < 7; n++) {
        int least = 5 + n + 10 * random.nextInt(5);
        one.need(least, least + 10 + random.nextInt(20), 3);
      }
      Trial trial = one.trial();
      int dishes = trial.menu().dishes().size();
      for (int round = 0; round < dishes; round++) {
        for (int dish = 0; dish < dishes; dish++) {
          feed(trial, dish);
        }
      }
      int fed = dishes - trial.servings().unserved().cardinality();
      assertThat(fed).as("seed " + seed).isEqualTo(mostFed(trial.menu().dishes(), 0, new BitSet()));
    }
  }

  /** Every piece to everybody who may have it. */
  private static int mostFed(List<Menu.Dish> dishes, int dish, BitSet gone) {
    if (dish == dishes.size()) {
      return 0;
    }
    int most = mostFed(dishes, dish + 1, gone);
    for (int item : dishes.get(dish).items().stream().toArray()) {
      if (!gone.get(item)) {
        gone.set(item);
        most = Math.max(most, 1 + mostFed(dishes, dish + 1, gone));
        gone.clear(item);
      }
    }
    return most;
  }
}
