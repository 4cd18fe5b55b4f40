package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prey has a best before of its own where a file says so. */
class BestBeforeTest {
  @TempDir Path folder;

  private Scenario read() throws IOException {
    Samples.goodCopy(folder);
    Files.writeString(
        folder.resolve("freezers.csv"),
        """
        name,usable_litres,kind,life_days,small_prey_below_g,small_prey_life_days,in_use,best_days
        Kitchen,12.5,household,,10,60,yes,30
        Chest,60,deep,190,,,yes,
        Old chest,40,deep,,,,no,100
        """);
    Files.writeString(
        folder.resolve("stock.csv"),
        """
        lot,supplier,item,pieces,freezer,arrived,use_by,best_before
        A1,hillside,Adult mouse,18,Kitchen,2030-12-01,,
        A2,hillside,Adult mouse,5,Chest,2030-11-15,2031-04-30,2031-03-31
        A3,hillside,Adult mouse,5,Kitchen,2030-12-20,2030-12-31,
        """);
    String scenario = Samples.text(folder.resolve("scenario.json"));
    Files.writeString(
        folder.resolve("scenario.json"),
        scenario.replace("\"charges\": {", "\"charges\": {\"perPiecePastBest\": \"0.05\", "));
    return Samples.accepted(ScenarioFolder.read(folder)).scenario();
  }

  private static Keeps keeps(String bestBefore, String useBy) {
    return new Keeps(LocalDate.parse(bestBefore), LocalDate.parse(useBy));
  }

  /**
   * Household 91 days, common practice, at its best for 30 of them, the day of arrival included.
   */
  @Test
  void stock_has_the_dates_of_its_freezer_unless_they_are_typed() throws IOException {
    assertThat(read().larder().stock())
        .extracting(lot -> lot.keeps())
        .containsExactly(
            keeps("2030-12-30", "2031-03-01"),
            keeps("2031-03-31", "2031-04-30"),
            keeps("2030-12-31", "2030-12-31"));
  }

  @Test
  void a_freezer_without_it_keeps_prey_at_its_best() throws IOException {
    Scenario scenario = read();
    assertThat(scenario.larder().freezers())
        .extracting(freezer -> freezer.name() + " " + freezer.life().best().days())
        .containsExactlyInAnyOrder(
            "Kitchen 30", "Chest " + Freezer.Best.ALWAYS.days(), "Old chest 100");
    assertThat(scenario.policy().charges().pastBest()).isEqualTo(Money.of("0.05"));
  }
}
