package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Scenario;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From animals.csv to what is on the plate, when, and how late it may come. */
class PlateTest {
  @TempDir Path folder;

  /** 21 g lie between 16 and 32 g, the fourth doubling of a gram. */
  private static final SizeBand HAD = new SizeBand("mouse", 4);

  private Scenario scenario(String columns, String ofAmber) throws IOException {
    Samples.goodCopy(folder);
    Path file = folder.resolve("animals.csv");
    List<String> rows = Files.readAllLines(file);
    String none = ",".repeat(columns.split(",").length);
    StringBuilder text = new StringBuilder();
    for (String row : rows) {
      String more =
          row.startsWith("name") ? "," + columns : row.startsWith("Amber") ? "," + ofAmber : none;
      text.append(row).append(more).append('\n');
    }
    Files.writeString(file, text);
    return Samples.accepted(ScenarioFolder.read(folder)).scenario();
  }

  private Animal amber(String columns, String cells) throws IOException {
    return scenario(columns, cells).collection().animals().get(0);
  }

  private Plate plate(String columns, String cells) throws IOException {
    return amber(columns, cells).diet().plate();
  }

  private static Map<String, Percent> shares(String kind, String percent) {
    return new TreeMap<>(Map.of(kind, Percent.of(percent)));
  }

  @Test
  void an_animal_without_a_history_takes_anything() throws IOException {
    assertThat(plate("changes", "")).isEqualTo(Plate.ANY);
  }

  @Test
  void an_animal_with_a_history_keeps_to_it_by_default() throws IOException {
    assertThat(plate("last_kind,last_piece_g", "mouse,21").change())
        .isEqualTo(new Plate.Keep(Set.of(HAD)));
    assertThat(plate("last_kind,last_piece_g,changes", "mouse,21,free").change())
        .isEqualTo(new Plate.Free());
    assertThat(plate("last_kind,last_piece_g,changes", "mouse,21,never").change())
        .isEqualTo(new Plate.Never(HAD));
    assertThat(plate("last_kind,last_piece_g,meals_between_changes", "mouse,21,5").change())
        .isEqualTo(new Plate.Seldom(5, Set.of(HAD)));
  }

  /**
   * It accepts mouse and gerbil; of the one that is not preferred nothing unless a share is typed.
   */
  @Test
  void other_kinds_than_the_preferred_have_their_share() throws IOException {
    assertThat(plate("preferred_kind", "mouse").largestShares()).isEqualTo(shares("gerbil", "0"));
    assertThat(plate("preferred_kind,largest_shares", "mouse,gerbil:12.5").largestShares())
        .isEqualTo(shares("gerbil", "12.5"));
    assertThat(plate("largest_shares", "mouse:50").largestShares())
        .isEqualTo(shares("mouse", "50"));
  }

  @Test
  void late_meals_are_limited() throws IOException {
    assertThat(amber("most_late_meals,most_late_days", "2,5").programme().days().limits())
        .containsExactly(
            new Lateness(Lateness.Counted.MEALS, 2), new Lateness(Lateness.Counted.DAYS, 5));
  }

  @Test
  void a_room_has_its_weekdays_and_the_keeper_days_away() throws IOException {
    Samples.goodCopy(folder);
    String json = Files.readString(folder.resolve("scenario.json"));
    String rooms =
        """
        "noFeeding": ["2031-02-01/2031-02-03"],
        "rooms": [{"name": "Attic", "feedingWeekdays": ["sat", "tue"]}],
        "kinds": [""";
    String changed = json.replace("\"kinds\": [", rooms);
    Path file = folder.resolve("animals.csv");
    String rows = Files.readString(file).replaceAll("(?m)^(Amber.*)$", "$1,Attic");
    Files.writeString(
        file, rows.replaceAll("(?m)^(name.*)$", "$1,room").replaceAll("(?m)^([BCD].*)$", "$1,"));
    Files.writeString(folder.resolve("scenario.json"), changed);
    List<Animal> animals =
        Samples.accepted(ScenarioFolder.read(folder)).scenario().collection().animals();
    List<Period> away =
        List.of(new Period(LocalDate.parse("2031-02-01"), LocalDate.parse("2031-02-03")));
    assertThat(animals.get(0).feedingDays())
        .isEqualTo(new FeedingDays("Attic", Set.of(DayOfWeek.SATURDAY, DayOfWeek.TUESDAY), away));
    assertThat(animals.get(1).feedingDays()).isEqualTo(FeedingDays.ANY.withAway(away));
  }
}
