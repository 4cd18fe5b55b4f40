package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ash should eat on the 3rd, or up to three days late, Bay on the 5th; prey keeps for two days, and
 * a show sells single mice at 1.00 on the 2nd and the 5th. One order for both, on the 5th, has Ash
 * eat two days late; two orders have nobody late.
 */
class LateByDefaultTest {
  @TempDir Path folder;

  /** Two orders at 0.04 are 0.08, one and two days at 0.05 are 0.14. */
  @Test
  void a_little_effort_is_not_saved_by_a_late_meal() throws IOException {
    Answer.Judged plan = best("\"perOrder\": \"0.04\", \"perDeliveryDay\": 0");
    assertThat(plan.standing().money()).isEqualTo(Money.of("2.08"));
    assertThat(days(plan)).containsExactly("2031-01-03", "2031-01-05");
  }

  /** Two orders at 0.20 are 0.40, one and two days are 0.30. */
  @Test
  void much_effort_is() throws IOException {
    Answer.Judged plan = best("\"perOrder\": \"0.20\", \"perDeliveryDay\": 0");
    assertThat(plan.standing().money()).isEqualTo(Money.of("2.30"));
    assertThat(days(plan)).containsExactly("2031-01-05", "2031-01-05");
  }

  @Test
  void where_lateness_is_free_the_least_effort_is() throws IOException {
    Answer.Judged plan =
        best("\"perOrder\": \"0.04\", \"perDeliveryDay\": 0, \"lateMealPerDay\": 0");
    assertThat(plan.standing().money()).isEqualTo(Money.of("2.04"));
    assertThat(days(plan)).containsExactly("2031-01-05", "2031-01-05");
  }

  private static List<String> days(Answer.Judged judged) {
    return judged.plan().feedings().stream()
        .map(Feeding::day)
        .sorted()
        .map(LocalDate::toString)
        .toList();
  }

  private Answer.Judged best(String charges) throws IOException {
    put(
        "scenario.json",
        """
        {"name": "Late", "from": "2031-01-01", "planningDays": 8, "place": "XF",
         "currency": "EUR", "suppliers": ["fair"],
         "policy": {"endValue": "none", "charges": {%s}}}
        """
            .formatted(charges));
    put(
        "animals.csv",
        """
        name,mass_g,weighed,every_days,next_meal,meal_g,largest_piece_g,kinds
        Ash,500,2031-01-01,30,2031-01-03,50,60,mouse
        Bay,500,2031-01-01,30,2031-01-05,50,60,mouse
        """);
    put("freezers.csv", "name,usable_litres,kind,life_days\nChest,10,deep,2\n");
    put(
        "supplier-profiles/fair/profile.json",
        """
        {"name": "Fair (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "show", "dates": ["2031-01-02", "2031-01-05"]}}
        """);
    put(
        "supplier-profiles/fair/prices.csv",
        "item,kind,least_g,mean_g,most_g,pack_count,price\nMouse,mouse,50,50,50,1,1.00\n");
    World world = World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario());
    Answer answer = Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan();
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
