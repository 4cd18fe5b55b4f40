package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Freezers that hold food too, or have less room on some days, as they are read. */
class SharedFreezerTest {
  @TempDir Path folder;

  private Reading.Accepted read() {
    return Samples.accepted(ScenarioFolder.read(folder));
  }

  private static Freezer freezer(Reading.Accepted reading, String name) {
    return World.of(reading.scenario()).freezer(name);
  }

  /** The kitchen freezer holds food; the old chest does too, but is not in use anyway. */
  private void typeFood() throws IOException {
    Samples.goodCopy(folder);
    Files.writeString(
        folder.resolve("freezers.csv"),
        """
        name,usable_litres,kind,in_use,holds_food
        Kitchen,12.5,household,yes,yes
        Chest,60,deep,yes,
        Old chest,40,deep,no,yes
        """);
  }

  @Test
  void one_that_holds_food_is_not_used_which_is_said_once() throws IOException {
    typeFood();
    Reading.Accepted reading = read();

    assertThat(freezer(reading, "Kitchen").inUse()).isFalse();
    assertThat(freezer(reading, "Chest").inUse()).isTrue();
    assertThat(reading.warnings())
        .filteredOn(warning -> warning.contains("holds food"))
        .singleElement()
        .asString()
        .contains("Kitchen holds food", "preySealedFromFood");
  }

  @Test
  void one_that_holds_food_is_used_where_prey_is_sealed() throws IOException {
    typeFood();
    Path scenario = folder.resolve("scenario.json");
    Files.writeString(
        scenario,
        Files.readString(scenario)
            .replace("\"policy\": {", "\"policy\": {\"preySealedFromFood\": true,"));
    Reading.Accepted reading = read();

    assertThat(freezer(reading, "Kitchen").inUse()).isTrue();
    assertThat(freezer(reading, "Kitchen").access().company()).isEqualTo(Freezer.Company.FOOD);
    assertThat(freezer(reading, "Old chest").inUse()).isFalse();
    assertThat(reading.warnings()).noneMatch(warning -> warning.contains("holds food"));
  }

  @Test
  void less_room_holds_on_its_days_and_the_order_of_rows_changes_nothing() throws IOException {
    Samples.goodCopy(folder);
    Path limits = folder.resolve("freezer-limits.csv");
    Files.writeString(
        limits, "freezer;days;litres\nKitchen;2031-02-01/2031-02-14;4,5\nKitchen;2031-02-10;0\n");
    Reading.Accepted reading = read();
    Freezer kitchen = freezer(reading, "Kitchen");

    assertThat(kitchen.usableOn(LocalDate.parse("2031-01-31"))).isEqualTo(litres("12.5"));
    assertThat(kitchen.usableOn(LocalDate.parse("2031-02-01"))).isEqualTo(litres("4.5"));
    assertThat(kitchen.usableOn(LocalDate.parse("2031-02-10"))).isEqualTo(Litres.ZERO);
    assertThat(kitchen.usableOn(LocalDate.parse("2031-02-14"))).isEqualTo(litres("4.5"));
    assertThat(kitchen.usableOn(LocalDate.parse("2031-02-15"))).isEqualTo(litres("12.5"));
    assertThat(freezer(reading, "Chest").access().limits()).isEmpty();

    Files.writeString(
        limits, "freezer,days,litres\nKitchen,2031-02-10,0\nKitchen,2031-02-01/2031-02-14,4.50\n");
    assertThat(read().digest()).isEqualTo(reading.digest());
  }

  private static Litres litres(String litres) {
    return Litres.of(new BigDecimal(litres));
  }
}
