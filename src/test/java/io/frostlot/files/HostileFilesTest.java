package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot lie in a repository as they are. */
class HostileFilesTest {
  @TempDir Path folder;

  @BeforeEach
  void copy() {
    Samples.goodCopy(folder);
  }

  private List<String> messages() {
    return Samples.messages(ScenarioFolder.read(folder));
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }

  @Test
  void shows_only_the_start_of_a_cell_of_two_million_characters() throws IOException {
    write("freezers.csv", "name,usable_litres\n" + "x".repeat(2_000_000) + ",40\n");

    assertThat(messages())
        .first()
        .asString()
        .startsWith("freezers.csv line 2, column name: found \"xxxx")
        .endsWith("...\" (2,000,000 characters), expected at most 10000 characters.");
    assertThat(messages()).allMatch(message -> message.length() < 400);
  }

  @Test
  void shows_only_the_start_of_a_json_text_of_two_million_characters() throws IOException {
    String json = Samples.text(folder.resolve("scenario.json"));
    write("scenario.json", json.replace("Reading room", "x".repeat(2_000_000)));

    assertThat(messages())
        .singleElement()
        .asString()
        .startsWith("scenario.json line 2, column 11 (name): found \"xxxx")
        .endsWith("(2,000,000 characters), expected at most 100 characters.");
  }

  @Test
  void refuses_a_header_of_two_million_characters() throws IOException {
    write("freezers.csv", "x".repeat(2_000_000));

    assertThat(messages()).isNotEmpty().allMatch(message -> message.length() < 400);
  }

  @Test
  void refuses_an_empty_file() throws IOException {
    write("freezers.csv", "");
    write("scenario.json", " \n");

    assertThat(messages())
        .containsExactly(
            "freezers.csv: found an empty file, expected text.",
            "scenario.json: found an empty file, expected text.");
  }

  @Test
  void refuses_binary_files() throws IOException {
    byte[] noise = new byte[5000];
    new Random(7).nextBytes(noise);
    Files.write(folder.resolve("placed.csv"), noise);
    Files.write(folder.resolve("stock.csv"), "lot,pieces\nA\0B,1".getBytes(StandardCharsets.UTF_8));
    Files.write(
        folder.resolve("freezers.csv"), "name,usable_litres".getBytes(StandardCharsets.UTF_16));

    assertThat(messages())
        .containsExactly(
            "freezers.csv: found bytes that are not UTF-8 text, expected a UTF-8 text file. Save it"
                + " as CSV or JSON in UTF-8.",
            "stock.csv: found a binary file, expected a UTF-8 text file. Save it as CSV or JSON in"
                + " UTF-8.",
            "placed.csv: found bytes that are not UTF-8 text, expected a UTF-8 text file. Save it"
                + " as CSV or JSON in UTF-8.");
  }

  @Test
  void refuses_a_file_of_more_than_sixteen_million_bytes() throws IOException {
    write("freezers.csv", "name,usable_litres\n" + "\n".repeat(16_000_000));

    assertThat(messages())
        .containsExactly("freezers.csv: found a larger file, expected at most 16,000,000 bytes.");
  }

  @Test
  void refuses_a_folder_that_is_a_file_and_the_reverse() throws IOException {
    Files.delete(folder.resolve("freezers.csv"));
    Files.createDirectory(folder.resolve("freezers.csv"));
    Files.delete(folder.resolve("supplier-profiles/fair/profile.json"));
    Files.delete(folder.resolve("supplier-profiles/fair/prices.csv"));
    Files.delete(folder.resolve("supplier-profiles/fair"));
    write("supplier-profiles/fair", "{}");

    assertThat(messages())
        .containsExactly(
            "freezers.csv: found a folder, expected a file.",
            "scenario.json line 9, column 39 (suppliers[2]): found \"fair\", expected a folder of"
                + " that name in supplier-profiles or ../../supplier-profiles.");
    assertThat(Samples.messages(ScenarioFolder.read(folder.resolve("scenario.json"))))
        .singleElement()
        .asString()
        .endsWith("scenario.json: found a file, expected a scenario folder.");
  }

  @Test
  void names_every_missing_file() throws IOException {
    for (String file :
        List.of(
            "scenario.json",
            "freezers.csv",
            "animals.csv",
            "needs.csv",
            "stock.csv",
            "placed.csv")) {
      Files.delete(folder.resolve(file));
    }

    assertThat(messages())
        .containsExactly(
            "freezers.csv: found no such file, expected a file. Maybe its name is misspelt.",
            "animals.csv: found no animals here and no needs in needs.csv, expected at least one of"
                + " either.",
            "scenario.json: found no such file, expected a file. Maybe its name is misspelt.");
    assertThat(Samples.messages(ScenarioFolder.read(folder.resolve("nowhere"))))
        .singleElement()
        .asString()
        .endsWith("nowhere: found no such folder, expected a scenario folder.");
  }

  @Test
  void names_the_missing_files_of_a_supplier() throws IOException {
    Files.delete(folder.resolve("supplier-profiles/corner/profile.json"));
    Files.delete(folder.resolve("supplier-profiles/corner/prices.csv"));

    assertThat(messages())
        .containsExactly(
            "corner/profile.json: found no such file, expected a file. Maybe its name is misspelt.",
            "corner/prices.csv: found no such file, expected a file. Maybe its name is misspelt.");
  }

  @Test
  void refuses_links_that_lead_to_themselves() throws IOException {
    Files.delete(folder.resolve("stock.csv"));
    Files.createSymbolicLink(folder.resolve("stock.csv"), Path.of("stock.csv"));
    Files.createSymbolicLink(folder.resolve("loop"), Path.of("loop"));

    assertThat(messages())
        .containsExactly(
            "stock.csv: found no plain file, expected a file. Maybe a link leads nowhere or to"
                + " itself.");
    assertThat(Samples.messages(ScenarioFolder.read(folder.resolve("loop")))).hasSize(1);
  }

  @Test
  void shows_a_thousand_problems_and_says_how_many_there_are_more() throws IOException {
    write("freezers.csv", "name,usable_litres\n" + ",x\n".repeat(2500));
    write("needs.csv", "kind\n");

    List<String> messages = messages();
    assertThat(messages)
        .filteredOn(message -> message.startsWith("freezers.csv line"))
        .hasSize(1000);
    assertThat(messages)
        .contains(
            "freezers.csv: found 5000 problems, expected none; the first 1000 are shown. Mend them"
                + " and try again.")
        .anyMatch(message -> message.startsWith("needs.csv line 1"));
  }

  @Test
  void refuses_more_rows_than_anybody_types() throws IOException {
    StringBuilder rows = new StringBuilder("name,usable_litres\n");
    for (int i = 0; i < 20_001; i++) {
      rows.append("f").append(i).append(",40\n");
    }
    write("freezers.csv", rows.toString());

    assertThat(messages())
        .first()
        .isEqualTo("freezers.csv line 20002: found more rows, expected at most 20000.");
  }

  @Test
  void looks_only_in_the_folder_of_profiles_that_is_given() {
    Reading reading = ScenarioFolder.read(folder, folder.resolve("supplier-profiles"));
    Reading elsewhere = ScenarioFolder.read(folder, folder);

    assertThat(Samples.accepted(reading).scenario().suppliers()).hasSize(3);
    assertThat(Samples.messages(elsewhere))
        .hasSize(3)
        .anyMatch(message -> message.contains("found \"corner\", expected a folder of that name"));
  }

  @Test
  void prefers_the_scenarios_own_profiles_to_the_shared_ones() throws IOException {
    Path room = folder.resolve("scenarios/room");
    Samples.goodCopy(room);
    Samples.copy(
        room.resolve("supplier-profiles/corner"), folder.resolve("supplier-profiles/corner"));
    for (Path file : Samples.files(room.resolve("supplier-profiles/corner"))) {
      Files.delete(file);
    }
    Files.delete(room.resolve("supplier-profiles/corner"));
    Path shared = folder.resolve("supplier-profiles/corner/profile.json");
    Files.writeString(shared, Samples.text(shared).replace("Corner Shop", "Shared Shop"));

    Reading.Accepted reading = Samples.accepted(ScenarioFolder.read(room));

    assertThat(reading.scenario().suppliers())
        .extracting(supplier -> supplier.name())
        .containsExactly(
            "Shared Shop (invented)", "Spring Fair (invented)", "Hillside Hatch (invented)");
  }
}
