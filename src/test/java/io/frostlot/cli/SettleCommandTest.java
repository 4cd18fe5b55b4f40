package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.app.GroupSamples;
import io.frostlot.app.InvoiceSamples;
import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettleCommandTest {
  private static final String SCHEMAS = "/io/frostlot/schema/";
  @TempDir Path folder;

  @BeforeEach
  void cyDropsOut() throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group("\"way\": \"equal\"");
    samples.invoice(", \"droppedOut\": [\"cy\"]" + InvoiceSamples.taken("bo", 10));
  }

  @Test
  void prints_the_new_sheet_and_the_difference() {
    CommandRun run = settle();

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out())
        .contains(
            "from North (invented), settled",
            "cy drops out.",
            "bo takes 10 Mouse of bag 2 from cy.")
        .containsPattern("bo +15.00 +10.50 +0.00 +25.50 +12.00 +13.50")
        .containsPattern("cy +0.00 +0.00 +0.00 +0.00 +17.00 +-17.00")
        .contains("ann has paid the supplier.")
        .contains("bo pays ann", "SHEET OF CY", "Collected and paid: ___");
    assertThat(run.out().lines().mapToInt(String::length)).allMatch(length -> length <= 80);
  }

  /** Bo's fifteen mice and half of 21: each sheet adds up on its own paper. */
  @Test
  void a_sheet_says_what_it_adds_up_from() {
    String letter = settle().out();
    String sheet = letter.substring(letter.indexOf("SHEET OF BO"), letter.indexOf("SHEET OF CY"));

    assertThat(sheet)
        .contains("bag 1 (of 10 pieces)")
        .containsPattern("as far as wanted \\.+ 15.00")
        .containsPattern("nobody wants \\.+ 10.50")
        .containsPattern("pays, EUR \\.+ 25.50");
  }

  /** Four of ten are lost, 4.00, of which 1.00 is paid back: borne by all like shipping, or not. */
  @Test
  void what_is_lost_stands_where_it_is_borne() throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.invoice(InvoiceSamples.lost(2, 4));
    assertThat(settle().out())
        .containsPattern("within what is\\s+shared \\.+ 3.00")
        .containsPattern(
            "invoice \\.+ 41.00\\s+less what is paid back \\.+ 1.00\\s+to pay \\.+ 40.00")
        .contains("ann has paid the supplier, and gets what is paid back.")
        .doesNotContain("losses");

    samples.group("\"way\": \"equal\", \"lostPieces\": \"holder\"");
    assertThat(settle().out())
        .contains("losses")
        .containsPattern("lost pieces, less what is paid back \\.+ 3.00")
        .doesNotContain("within what is");
  }

  /** Four of cy's ten are lost, 1.00 paid back; its 7 of charges stay: 40 - 6 - 7 by two. */
  @Test
  void who_keeps_its_share_as_ordered_bears_nothing_that_was_lost() throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group("\"way\": \"equal\", \"dropOut\": \"keeps-share\"");
    samples.invoice(", \"droppedOut\": [\"cy\"]" + InvoiceSamples.lost(2, 4));

    assertThat(settle().out())
        .containsPattern("ann +5.00 +8.50 +0.00 +13.50")
        .containsPattern("bo +5.00 +8.50 +0.00 +13.50")
        .containsPattern("cy +6.00 +7.00 +0.00 +13.00");
  }

  @Test
  void json_follows_its_schema() throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode schema =
        mapper.readTree(SettleCommandTest.class.getResource(SCHEMAS + "settlement.schema.json"));
    JsonNode json = mapper.readTree(settle("--format", "json").out());

    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(schema)
                .validate(json))
        .isEmpty();
    assertThat(json.at("/members/1/more").asText()).isEqualTo("13.50");
  }

  @Test
  void csv_has_the_columns_of_its_schema() throws IOException {
    CommandRun run = settle("--format", "csv");

    List<String> columns = new ArrayList<>();
    new ObjectMapper()
        .readTree(SettleCommandTest.class.getResource(SCHEMAS + "settlement.table-schema.json"))
        .get("fields")
        .forEach(field -> columns.add(field.get("name").asText()));
    assertThat(run.out().lines().findFirst().orElseThrow().split(","))
        .containsExactlyElementsOf(columns);
    assertThat(run.out()).contains("bo,15,15.00,0.00,10.50,0.00,25.50,12.00,EUR");
  }

  @Test
  void an_invoice_that_is_not_there_is_told() {
    CommandRun run = settle(folder.resolve("none.json"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err())
        .contains("none.json: found no such file", "Nothing was settled.")
        .doesNotContain("Exception");
    assertThat(run.out()).isEmpty();
  }

  private CommandRun settle(String... more) {
    return settle(folder.resolve("invoice.json"), more);
  }

  private CommandRun settle(Path invoice, String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("settle", folder.toString(), invoice.toString()));
    arguments.addAll(List.of("--profiles", folder.resolve("supplier-profiles").toString()));
    arguments.addAll(List.of(more));
    return CommandRun.of(Engine::solve, false, arguments.toArray(String[]::new));
  }
}
