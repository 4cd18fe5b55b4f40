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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShareCommandTest {
  private static final String SCHEMAS = "/io/frostlot/schema/";
  @TempDir Path folder;

  @BeforeEach
  void twoKeepers() throws IOException {
    new GroupSamples(folder).twoKeepers();
  }

  @Test
  void prints_who_pays_what_and_a_sheet_to_sign_for_each() {
    CommandRun run = share("--ways");

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("bo pays ann", "15.00", "SHEET OF ANN", "SHEET OF BO", "Collected and paid: ___")
        .contains("nucleolus", "Nobody has a reason to leave")
        .contains("The host has paid the supplier.", "All meals of the planning days are met (5).")
        .containsPattern("Mouse +5 +125.g +bag 1 \\(of 10 pieces\\) +5 +5.00")
        .contains("Freezing does not kill the germs", "dry ice");
    assertThat(run.out().lines().mapToInt(String::length)).allMatch(length -> length <= 80);
  }

  /** Nobody collects before the 20th, so each orders alone and pays its own supplier. */
  @Test
  void no_host_has_paid_where_nothing_is_ordered_together() throws IOException {
    new GroupSamples(folder).group(", \"handOvers\": [\"2031-01-20\"]", "ann", "bo");

    assertThat(share().out())
        .contains("Nothing is ordered together", "Nobody owes anybody anything.")
        .doesNotContain("has paid the supplier", "Collected and paid", "for itself");
  }

  @Test
  void json_says_what_should_be_looked_at() throws IOException {
    Path profile = folder.resolve("supplier-profiles/north/profile.json");
    String old = Files.readString(profile).replace("\"2031-01-01\"", "\"2028-01-01\"");
    Files.writeString(profile, old);

    JsonNode json = new ObjectMapper().readTree(share("--format", "json").out());

    assertThat(json.at("/warnings")).hasSize(2);
    assertThat(json.at("/warnings/0").asText()).startsWith("ann: ").contains("2028-01-01");
  }

  @Test
  void json_follows_its_schema() throws IOException {
    CommandRun run = share("--ways", "--format", "json");

    ObjectMapper mapper = new ObjectMapper();
    JsonNode schema =
        mapper.readTree(ShareCommandTest.class.getResource(SCHEMAS + "share.schema.json"));
    JsonNode json = mapper.readTree(run.out());
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(schema)
                .validate(json))
        .isEmpty();
    assertThat(json.at("/status").asText()).isEqualTo("shared");
    assertThat(json.at("/members/1/pays").asText()).isEqualTo("15.00");
    assertThat(json.at("/members/1/collects/0/grams").asInt()).isEqualTo(125);
    assertThat(json.at("/members/1/meals").asInt()).isEqualTo(5);
    assertThat(json.at("/members/1/mealsMet").asInt()).isEqualTo(5);
    assertThat(json.at("/warnings")).isEmpty();
  }

  @Test
  void csv_has_the_columns_of_its_schema() throws IOException {
    CommandRun run = share("--format", "csv");

    List<String> columns = new ArrayList<>();
    new ObjectMapper()
        .readTree(ShareCommandTest.class.getResource(SCHEMAS + "share-sheet.table-schema.json"))
        .get("fields")
        .forEach(field -> columns.add(field.get("name").asText()));
    assertThat(run.out().lines().findFirst().orElseThrow().split(","))
        .containsExactlyElementsOf(columns);
    assertThat(run.out()).contains("bo,north,2031-01-05,2031-01-06,Mouse,5,5,1,10,125,5.00,EUR");
  }

  /** What is expected settles to what was shared: 5 + 10 each. */
  @Test
  void invoices_to_correct_are_written_and_can_be_settled() throws IOException {
    assertThat(share("--invoices", folder.toString()).exitCode()).isZero();

    Path invoice = folder.resolve("north-2031-01-05.json");
    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "settle",
            folder.toString(),
            invoice.toString(),
            "--format",
            "csv",
            "--profiles",
            folder.resolve("supplier-profiles").toString());
    assertThat(run.out())
        .as(run.err())
        .contains("ann,5,5.00,0.00,10.00,0.00,15.00", "bo,5,5.00,0.00,10.00,0.00,15.00");
  }

  /** As for order sheets, a folder is made where it is missing. */
  @Test
  void invoices_go_into_a_new_folder() {
    assertThat(share("--invoices", folder.resolve("new/all").toString()).exitCode()).isZero();
    assertThat(folder.resolve("new/all/north-2031-01-05.json")).isNotEmptyFile();
  }

  @Test
  void all_problems_are_told_at_once() throws IOException {
    new GroupSamples(folder)
        .put(
            "group.json",
            """
            {"name": "Group",
             "members": [{"name": "ann", "scenario": "ann"}, {"name": "ann", "scenario": "nobody"},
                         {"name": "cy"},
                         {"name": "di", "wanted": [{"kind": "mouse", "sizeWord": "hoper",
                                                    "pieces": 50, "by": "2031-06-01"}]}],
             "hosts": ["eve"],
             "cutting": [{"item": "Moose", "packCount": 10}]}
            """);

    CommandRun run = share();

    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err())
        .contains("found \"ann\", expected a name that no other member has")
        .contains("found no such folder, expected a scenario folder")
        .contains("found neither scenario nor wanted, expected exactly one of them")
        .contains("found \"hoper\", expected one of adult")
        .contains("found \"2031-06-01\", expected a day within 2031-01-01/2031-01-30")
        .contains("found \"eve\", expected one of the members")
        .contains("found \"Moose x10\", expected an item and a count of a price sheet")
        .contains("Nothing was planned.")
        .doesNotContain("Exception");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void members_must_plan_the_same_days() throws IOException {
    new GroupSamples(folder)
        .put(
            "bo/scenario.json",
            """
            {"name": "Test", "from": "2031-01-02", "planningDays": 30, "currency": "EUR",
             "suppliers": ["north"]}
            """);

    assertThat(share().err())
        .contains("found planning days 2031-01-02/2031-01-31, expected 2031-01-01/2031-01-30")
        .contains("found a policy of its own, expected the policy of the first member's scenario");
  }

  @Test
  void members_may_not_sort_bags_before_they_are_handed_out() throws IOException {
    new GroupSamples(folder)
        .put(
            "bo/scenario.json",
            """
            {"name": "Test", "from": "2031-01-01", "planningDays": 30, "currency": "EUR",
             "suppliers": ["north"], "sortBags": true}
            """);

    assertThat(share().err()).contains("found sortBags, expected bags as they are sold");
  }

  /** Ten mice wanted by name of size, 10 + 20 alone, and together with ann's five 20 + 20. */
  @Test
  void a_member_may_just_list_what_it_wants() throws IOException {
    new GroupSamples(folder)
        .put(
            "group.json",
            """
            {"name": "Group",
             "members": [{"name": "ann", "scenario": "ann"},
                         {"name": "di", "wanted": [{"kind": "mouse", "sizeWord": "extra large",
                                                    "pieces": 2, "by": "2031-01-20"}]}],
             "hosts": ["ann"]}
            """);
    new GroupSamples(folder)
        .put(
            "supplier-profiles/north/prices.csv",
            """
            item,kind,least_g,most_g,pack_count,price,litres_per_piece
            Mouse,mouse,20,30,10,10,1
            Large mouse,mouse,27,35,2,4,1
            """);

    CommandRun run = share("--format", "csv");

    assertThat(run.out()).contains("di,north,2031-01-05,2031-01-06,Large mouse,2,2,1,2,62,4.00");
  }

  @Test
  void the_time_is_thirty_seconds_and_not_limited_where_rounds_are_counted() {
    List<Long> seconds = new CopyOnWriteArrayList<>();
    Planner planner =
        (world, limits, watch) -> {
          seconds.add(limits.time().toSeconds());
          return new Answer.NothingFound();
        };
    String profiles = "--profiles=" + folder.resolve("supplier-profiles");
    for (String more : List.of("--ways", "--effort=2", "--seconds=7")) {
      CommandRun run = CommandRun.of(planner, false, "share", folder.toString(), profiles, more);
      assertThat(run.exitCode()).isEqualTo(ExitCode.NOTHING_IN_TIME);
    }
    assertThat(seconds.stream().distinct()).containsExactly(30L, 1_000_000L, 7L);
  }

  private CommandRun share(String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("share", folder.toString(), "--effort", "20", "--seconds", "100"));
    arguments.addAll(List.of("--profiles", folder.resolve("supplier-profiles").toString()));
    arguments.addAll(List.of(more));
    return CommandRun.of(Engine::solve, false, arguments.toArray(String[]::new));
  }
}
