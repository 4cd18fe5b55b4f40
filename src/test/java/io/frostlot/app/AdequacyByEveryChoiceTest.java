package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One or two animals that get 12 to 30 g, best 20 g, every other day, one to six times, from a shop
 * with any number of single pieces: the engine held to trying every choice at every meal, worked
 * out here in plain numbers. {@code -Dfrostlot.worlds=500} asks for more of them.
 */
class AdequacyByEveryChoiceTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 16);
  private static final double BEST = 20;

  @TempDir Path folder;

  private record Prey(int grams, int cents) {}

  /** Least and most grams of so many meals. */
  private record Band(int meals, double least, double most) {
    static Band wanted(int meals) {
      return new Band(meals, 0.97 * BEST * meals, 1.05 * BEST * meals);
    }

    double off(int grams) {
      return Math.max(0, Math.max(least - grams, grams - most));
    }

    double percentOff(int grams) {
      return 100 * off(grams) / (BEST * meals);
    }
  }

  /** All that one animal gets: percent outside the band over all runs, and the price. */
  private record Fed(double off, long cents) {}

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void finds_what_trying_every_choice_finds(long seed) throws IOException {
    Random random = new Random(seed);
    int animals = 1 + random.nextInt(2);
    int meals = 1 + random.nextInt(6);
    List<Prey> prey = new ArrayList<>();
    int grams = 12 + random.nextInt(5);
    for (int i = 0; i < 2 + random.nextInt(2) && grams <= 30; i++) {
      prey.add(new Prey(grams, 50 + random.nextInt(250)));
      grams += 3 + random.nextInt(7);
    }
    assertThat(solve(animals, meals, prey)).isEqualTo(best(animals, meals, prey));
  }

  private static Standing best(int animals, int meals, List<Prey> prey) {
    int run = Math.min(4, meals);
    Band band = band(run, prey);
    List<Fed> each = new ArrayList<>();
    int ways = (int) Math.pow(prey.size(), meals);
    for (int way = 0; way < ways; way++) {
      int[] picked = picked(way, meals, prey.size());
      double off = 0;
      for (int from = 0; from + run <= meals; from++) {
        int sum = IntStream.range(from, from + run).map(m -> prey.get(picked[m]).grams()).sum();
        off += band.percentOff(sum);
      }
      each.add(new Fed(off, IntStream.of(picked).mapToLong(p -> prey.get(p).cents()).sum()));
    }
    Standing best = new Standing(0, 0, Long.MAX_VALUE, Money.ZERO);
    for (Fed first : each) {
      for (Fed second : animals == 1 ? List.of(new Fed(0, 0)) : each) {
        long shortfall = (long) Math.max(0, Math.ceil(first.off() + second.off() - 0.001));
        Money money = new Money(BigDecimal.valueOf(first.cents() + second.cents(), 2));
        Standing standing = new Standing(0, 0, shortfall, money);
        best = standing.compareTo(best) < 0 ? standing : best;
      }
    }
    return best;
  }

  private static int[] picked(int way, int meals, int choices) {
    int[] picked = new int[meals];
    for (int m = 0, rest = way; m < meals; m++, rest /= choices) {
      picked[m] = rest % choices;
    }
    return picked;
  }

  /** Widened to the sum of so many pieces that is nearest, where none lies inside. */
  private static Band band(int meals, List<Prey> prey) {
    Band wanted = Band.wanted(meals);
    double nearest = Double.POSITIVE_INFINITY;
    Band band = wanted;
    for (int way = 0; way < Math.pow(prey.size(), meals); way++) {
      int sum = IntStream.of(picked(way, meals, prey.size())).map(p -> prey.get(p).grams()).sum();
      double off = wanted.off(sum);
      if (off < nearest - 1e-9 || (Math.abs(off - nearest) < 1e-9 && sum > wanted.most())) {
        nearest = off;
        band = new Band(meals, Math.min(wanted.least(), sum), Math.max(wanted.most(), sum));
      }
    }
    return band;
  }

  private Standing solve(int animals, int meals, List<Prey> prey) throws IOException {
    StringBuilder rows =
        new StringBuilder(
            "name,mass_g,weighed,curve,every_days,next_meal,meal_percent,meal_least_percent,"
                + "meal_most_percent,largest_piece_g,kinds,most_pieces,importance,late_days\n");
    for (int i = 0; i < animals; i++) {
      rows.append("A").append(i);
      rows.append(",200,2031-01-01,constant,2,2031-01-02,10,60,150,40,mouse,1,may-slide,0\n");
    }
    put("animals.csv", rows.toString());
    put("freezers.csv", "name,usable_litres,kind,life_days\nOne,100,deep,30\n");
    put(
        "scenario.json",
        """
        {"name": "Every choice", "from": "2031-01-01", "planningDays": %d, "place": "XF",
         "currency": "EUR", "suppliers": ["corner"], "policy": {"endValue": "none",
          "charges": {"perOrder": 0, "perDeliveryDay": 0}}}
        """
            .formatted(2 * meals));
    put(
        "supplier-profiles/corner/profile.json",
        """
        {"name": "Corner", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "show", "dates": ["2031-01-01"]}}
        """);
    StringBuilder prices =
        new StringBuilder("item,kind,least_g,mean_g,most_g,pack_count,price,litres_per_piece\n");
    for (Prey one : prey) {
      int g = one.grams();
      prices.append(
          "Mouse of %d,mouse,%d,%d,%d,1,%d.%02d,1\n"
              .formatted(g, g, g, g, one.cents() / 100, one.cents() % 100));
    }
    put("supplier-profiles/corner/prices.csv", prices.toString());
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    World world = World.of(((Reading.Accepted) reading).scenario());
    Answer answer = Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan().standing();
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
