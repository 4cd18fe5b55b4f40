package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.app.GroupSamples;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import io.frostlot.program.Engine;
import io.frostlot.report.ParsedPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code share} where there is nothing to share, and why. */
class NothingSharedTest {
  @TempDir Path folder;

  @BeforeEach
  void twoKeepers() throws IOException {
    new GroupSamples(folder).twoKeepers();
  }

  private CommandRun share(Planner planner, String... more) {
    Path profiles = folder.resolve("supplier-profiles");
    List<String> usual =
        List.of(
            "share", folder.toString(), "--effort=20", "--seconds=100", "--profiles=" + profiles);
    return CommandRun.of(
        planner, false, Stream.concat(usual.stream(), Stream.of(more)).toArray(String[]::new));
  }

  @Test
  void a_folder_for_invoices_that_cannot_be_is_told_before_anything_is_planned() {
    Planner planner =
        (world, limits, watch) -> {
          throw new IllegalStateException("planned");
        };
    Path file = folder.resolve("group.json");
    for (Path place : List.of(file, file.resolve("invoices"))) {
      CommandRun run = share(planner, "--invoices", place.toString());
      assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
      assertThat(run.err())
          .contains(place + ": found a folder that cannot be written to", "Nothing was planned.");
    }
  }

  /** Five mice of a litre each never fit half a litre. */
  @Test
  void a_member_whose_own_plan_is_impossible_is_named_with_what_clashes() throws IOException {
    GroupSamples samples = new GroupSamples(folder);
    samples.put("bo/freezers.csv", "name,usable_litres,kind,life_days\nBox,0.5,deep,30\n");
    for (String member : List.of("ann", "bo")) {
      String scenario = Files.readString(folder.resolve(member + "/scenario.json"));
      samples.put(
          member + "/scenario.json",
          scenario.replace("\"endValue\"", "\"meals\": \"all\", \"endValue\""));
    }
    Path page = Files.writeString(folder.resolve("page.html"), "an earlier one");

    CommandRun run = share(Engine::solve, "--page", page.toString());

    assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.IMPOSSIBLE);
    assertThat(run.out())
        .startsWith("Frostlot: no joint order for Group\n")
        .contains("bo has no plan of its own", "Box holds 0.5 l", "the others could be kept.")
        .doesNotContain("ann");
    ParsedPage parsed = ParsedPage.of(Files.readString(page));
    assertThat(parsed.all("//h1")).containsExactly("Frostlot: no joint order for Group");
    assertThat(parsed.all("//li")).anyMatch(rule -> rule.contains("Box holds 0.5 l"));
    CommandRun json = share(Engine::solve, "--format", "json");
    assertThat(json.exitCode()).isEqualTo(ExitCode.IMPOSSIBLE);
    JsonNode none = valid(json);
    assertThat(none.get("status").asText()).isEqualTo("impossible");
    assertThat(none.get("without").asText()).isEqualTo("bo");
    assertThat(none.get("clash")).anyMatch(rule -> rule.asText().contains("Box holds 0.5 l"));
    CommandRun csv = share(Engine::solve, "--format", "csv");
    assertThat(csv.out()).startsWith("member,supplier,order_by,").hasLineCount(1);
    assertThat(csv.err()).contains("bo has no plan of its own", "Box holds 0.5 l");
  }

  /** Judged by another implementation of JSON Schema. */
  private static JsonNode valid(CommandRun json) throws IOException {
    JsonNode none = new ObjectMapper().readTree(json.out());
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(
                    NothingSharedTest.class.getResourceAsStream(
                        "/io/frostlot/schema/share.schema.json"))
                .validate(none))
        .isEmpty();
    return none;
  }

  @Test
  void a_member_for_whom_nothing_was_found_is_named() throws IOException {
    Planner planner = (world, limits, watch) -> new Answer.NothingFound();
    JsonNode none = valid(share(planner, "--format", "json"));
    assertThat(none.get("status").asText()).isEqualTo("none");
    assertThat(none.get("without").asText()).isIn("ann", "bo");
    assertThat(none.get("clash")).isEmpty();
    CommandRun run = share(planner);
    assertThat(run.exitCode()).isEqualTo(ExitCode.NOTHING_IN_TIME);
    assertThat(run.out())
        .containsPattern("(ann|bo) has no plan of its own")
        .contains("None was found in the time given", "--seconds");
  }
}
