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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of the sample invoice bo owes 12.00 and cy 17.00 to ann, who received it. */
class LedgerCommandTest {
  @TempDir Path folder;
  private Path ledger = Path.of("");

  @BeforeEach
  void group() throws IOException {
    ledger = folder.resolve("ledger.csv");
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group("\"way\": \"equal\"");
    samples.invoice("");
  }

  /** 12 - 5 + 2 = 9 for bo, 17 for cy, 26 for ann. */
  @Test
  void boxes_payments_and_late_pick_up_run_on() {
    assertThat(settle().exitCode()).isZero();
    assertThat(add("payment", "bo", "ann", "5").exitCode()).isZero();
    assertThat(add("late-pick-up", "ann", "bo", "2.00").exitCode()).isZero();

    CommandRun run = run("ledger", ledger.toString());

    assertThat(run.out())
        .containsPattern("ann is owed \\.+ 26.00")
        .containsPattern("bo owes \\.+ 9.00")
        .containsPattern("cy owes \\.+ 17.00")
        .containsPattern("bo pays ann \\.+ 9.00")
        .contains("4 entries in EUR");
    assertThat(run("ledger", ledger.toString(), "--format", "csv").out())
        .isEqualTo("name,owes,currency\r\nann,-26.00,EUR\r\nbo,9.00,EUR\r\ncy,17.00,EUR\r\n");
  }

  /** Settled twice nothing is added; when bo has taken over cy's ten, 25.50 - 12 and -17. */
  @Test
  void a_box_that_is_settled_again_adds_the_difference() throws IOException {
    settle();
    String first = Files.readString(ledger);
    settle();
    assertThat(Files.readString(ledger)).isEqualTo(first);

    new InvoiceSamples(new GroupSamples(folder))
        .invoice(", \"droppedOut\": [\"cy\"]" + InvoiceSamples.taken("bo", 10));
    assertThat(settle().exitCode()).isZero();

    assertThat(Files.readString(ledger))
        .startsWith(first)
        .contains("3,2031-01-06,correction,north 2031-01-05 ann,ann,bo,13.50,EUR,")
        .contains("4,2031-01-06,correction,north 2031-01-05 ann,cy,ann,17.00,EUR,");
  }

  @Test
  void settling_says_what_was_added_and_the_digest_to_look_for() throws IOException {
    String first = settle().out().replaceAll("\\s+", " ");
    List<String> rows = Files.readAllLines(ledger);
    String digest = rows.get(2).substring(rows.get(2).lastIndexOf(',') + 1);
    String second = settle().out().replaceAll("\\s+", " ");

    assertThat(first)
        .contains("added, box: ann gave bo", "added, box: ann gave cy")
        .contains("2 entries were added to ledger.csv. The last entry has the digest " + digest);
    assertThat(second)
        .contains("Nothing was added: ledger.csv has all of it already.")
        .contains("The last entry has the digest " + digest);
    assertThat(settle("--format", "json").err()).contains("Nothing was added", digest);
  }

  /** The next box came to bo: ann 12 - 29, bo 12 - 29, cy 17 + 17. */
  @Test
  void hosts_may_change() throws IOException {
    settle();
    String text = Files.readString(folder.resolve("invoice.json"));
    new GroupSamples(folder)
        .put(
            "invoice.json",
            text.replace("2031-01-05", "2031-01-11")
                .replace("\"host\": \"ann\"", "\"host\": \"bo\""));
    settle();

    assertThat(run("ledger", ledger.toString(), "--format", "csv").out())
        .contains("ann,-17.00,EUR", "bo,-17.00,EUR", "cy,34.00,EUR");
  }

  @Test
  void a_row_that_was_changed_or_taken_out_is_refused_and_nothing_is_written() throws IOException {
    settle();
    add("payment", "bo", "ann", "5");
    List<String> rows = Files.readAllLines(ledger);

    for (int row = 1; row <= 2; row++) {
      List<String> fewer = new ArrayList<>(rows);
      fewer.remove(row);
      refused(fewer, "expected the digest of this row and the one before");
    }
    List<String> dearer = new ArrayList<>(rows);
    dearer.set(1, dearer.get(1).replace("12.00", "11.00"));
    refused(dearer, "expected the digest of this row and the one before");
    List<String> cut = new ArrayList<>(rows);
    cut.set(3, cut.get(3).substring(0, cut.get(3).length() - 4));
    refused(cut, "ledger.csv line 4, column digest");
  }

  /** What is cut off the end whole is noticed by who has seen it. */
  @Test
  void an_entry_that_was_seen_must_still_be_there() throws IOException {
    settle();
    List<String> rows = Files.readAllLines(ledger);
    String seen = rows.get(2).substring(rows.get(2).lastIndexOf(',') + 1);
    assertThat(run("ledger", ledger.toString(), "--seen", seen).exitCode()).isZero();
    Files.write(ledger, rows.subList(0, 2));

    CommandRun run = run("ledger", ledger.toString(), "--seen", seen);

    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains("expected the entry that was there");
  }

  @Test
  void what_is_typed_wrongly_is_told_and_nothing_is_written() {
    assertThat(add("gift", "bo", "ann", "5").err()).contains("--add: found \"gift\"");
    assertThat(add("payment", "", "ann", "5").err()).contains("--from: found nothing");
    assertThat(add("payment", "ann", "ann", "5").err()).contains("--to: found \"ann\"");
    assertThat(add("payment", "bo", "ann", "-5").err()).contains("--amount: found \"-5\"");
    assertThat(add("payment", "bo", "ann", "0.001").err()).contains("whole minor units");
    assertThat(ledger).doesNotExist();
    add("payment", "bo", "ann", "5");
    assertThat(run("ledger", ledger.toString(), "--currency", "USD").err())
        .contains("found money in EUR, expected USD");
  }

  /** What was typed would be lost without a word. */
  @Test
  void an_entry_without_its_kind_and_a_day_without_a_ledger_are_refused() {
    settle();
    for (String option : List.of("--from", "--to", "--amount", "--box", "--note", "--on")) {
      CommandRun run = run("ledger", ledger.toString(), option, "2031-01-07");
      assertThat(run.exitCode()).as(option).isEqualTo(ExitCode.INPUT_PROBLEMS);
      assertThat(run.err())
          .as(option)
          .contains("--add: found nothing, expected one of ", ", since an entry is described");
    }
    for (String option : List.of("--on", "--seen")) {
      CommandRun run =
          run("settle", folder.toString(), folder + "/invoice.json", option, "2031-01-07");
      assertThat(run.err()).contains("--on and --seen go with --ledger");
    }
  }

  @Test
  void a_ledger_that_is_not_there_is_none_without_entries() {
    CommandRun run = run("ledger", folder.resolve("leger.csv").toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("leger.csv: found no such file, expected a ledger");
  }

  /** A name that a spreadsheet would run comes back as it was typed. */
  @Test
  void formulas_are_made_harmless_and_json_follows_its_schema() throws IOException {
    add("credit", "=bo", "ann", "5");
    assertThat(Files.readString(ledger)).contains(",'=bo,ann,");

    ObjectMapper mapper = new ObjectMapper();
    JsonNode json = mapper.readTree(run("ledger", ledger.toString(), "--format", "json").out());
    JsonNode schema =
        mapper.readTree(
            LedgerCommandTest.class.getResource("/io/frostlot/schema/ledger.schema.json"));
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(schema)
                .validate(json))
        .isEmpty();
    assertThat(json.at("/balances/0/name").asText()).isEqualTo("=bo");
  }

  private void refused(List<String> rows, String expected) throws IOException {
    Files.write(ledger, rows);
    String before = Files.readString(ledger);
    CommandRun run = add("payment", "cy", "ann", "1");
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains(expected, "The ledger is as it was.");
    assertThat(Files.readString(ledger)).isEqualTo(before);
  }

  private CommandRun settle(String... more) {
    String invoice = folder.resolve("invoice.json").toString();
    List<String> arguments =
        new ArrayList<>(
            List.of("settle", folder.toString(), invoice, "--ledger", ledger.toString()));
    arguments.addAll(List.of("--on", "2031-01-06"));
    arguments.addAll(List.of("--profiles", folder.resolve("supplier-profiles").toString()));
    arguments.addAll(List.of(more));
    return run(arguments.toArray(String[]::new));
  }

  private CommandRun add(String kind, String from, String to, String amount) {
    List<String> arguments =
        new ArrayList<>(List.of("ledger", ledger.toString(), "--add", kind, "--from", from));
    arguments.addAll(List.of("--to", to, "--amount", amount, "--on", "2031-01-07"));
    return run(arguments.toArray(String[]::new));
  }

  private static CommandRun run(String... arguments) {
    return CommandRun.of(Engine::solve, false, arguments);
  }
}
