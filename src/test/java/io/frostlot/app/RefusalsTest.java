package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which meals are refused where a share of all is; the numbers follow by counting. */
class RefusalsTest {
  private static final String HEADER =
      "name,mass_g,weighed,weekdays,meal_g,largest_piece_g,kinds,late_days\n";
  @TempDir private Path folder;

  /** Four weeks, and none after. */
  private List<Demand> demands(String animals, String needs) throws IOException {
    new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras("", ", \"tailDays\": 0"),
            new OneMouseShop.Keeping(60, 10))
        .write(folder);
    Files.writeString(folder.resolve("animals.csv"), HEADER + animals);
    if (!needs.isEmpty()) {
      Files.writeString(
          folder.resolve("needs.csv"), "label,kind,least_g,most_g,pieces,date\n" + needs);
    }
    return World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario()).demands();
  }

  private static String weekly(String name, String weekday) {
    return "%s,500,2031-01-01,%s,50,60,mouse,0\n".formatted(name, weekday);
  }

  /** Ten animals, on three weekdays. */
  private List<Demand> tenAnimals() throws IOException {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 10; i++) {
      rows.append(weekly("A" + i, List.of("fri", "sat", "sun").get(i % 3)));
    }
    return demands(rows.toString(), "");
  }

  private static Map<String, Integer> lost(List<Demand> all, List<Demand> left) {
    Map<String, Integer> lost = new HashMap<>();
    all.forEach(it -> lost.merge(it.meal().eater(), it.meal().count(), Integer::sum));
    left.forEach(it -> lost.merge(it.meal().eater(), -it.meal().count(), Integer::sum));
    return lost;
  }

  /** Ten animals of four meals each: of 40 meals four, of four animals one each. */
  @Test
  void of_many_animals_with_few_meals_the_share_is_refused() throws IOException {
    List<Demand> all = tenAnimals();
    List<Demand> left = Refusals.without(all, 0.1);

    assertThat(all).hasSize(40);
    assertThat(left).hasSize(36);
    assertThat(lost(all, left).values()).containsOnly(0, 1);
    assertThat(Refusals.without(all, 0.1)).isEqualTo(left);
  }

  @Test
  void up_to_each_meal_the_share_is_refused() throws IOException {
    List<Demand> all = tenAnimals();
    for (int percent = 0; percent <= 100; percent++) {
      for (int meals = 1; meals <= all.size(); meals++) {
        assertThat(Refusals.without(all.subList(0, meals), percent / 100.0))
            .as("%s %% of %s meals", percent, meals)
            .hasSize(meals - percent * meals / 100);
      }
    }
  }

  /** Each of ten animals has had a quarter of its meals refused before one has had two. */
  @Test
  void nobody_loses_two_before_all_have_lost_one() throws IOException {
    List<Demand> all = tenAnimals();
    for (int percent = 1; percent <= 100; percent++) {
      Map<String, Integer> lost = lost(all, Refusals.without(all, percent / 100.0));
      assertThat(Collections.max(lost.values()) - Collections.min(lost.values()))
          .as("%s %%", percent)
          .isLessThanOrEqualTo(1);
    }
  }

  /** Of four meals of Ash and 20 pieces for guests, a quarter: one and five. */
  @Test
  void of_what_is_wanted_several_times_a_part_is_refused() throws IOException {
    List<Demand> all = demands(weekly("Ash", "wed"), "guests,mouse,40,60,20,2031-01-28\n");
    assertThat(lost(all, Refusals.without(all, 0.25))).isEqualTo(Map.of("Ash", 1, "guests", 5));
  }
}
