package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.GroupSamples;
import io.frostlot.app.InvoiceSamples;
import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ledgers and invoices with wrong content: each says what stands there and what could. */
class WrongBooksTest {
  private static final String CHANGE = " -> ";
  @TempDir Path folder;

  private static CommandRun run(String... arguments) {
    return CommandRun.of(Engine::solve, false, arguments);
  }

  /** A part of the text as a pattern, what stands there instead, and what is said of it. */
  private static String change(Path file, String change) throws IOException {
    String[] parts = change.split(CHANGE, -1);
    String text = Files.readString(file);
    String changed = text.replaceFirst(parts[0], parts[1]);
    assertThat(changed).as(change).isNotEqualTo(text);
    Files.writeString(file, changed);
    return parts[2];
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "EUR -> eur -> line 2, column currency: found \"eur\", expected an ISO 4217 code such as EUR.",
        "EUR -> XXX -> line 2, column currency: found \"XXX\", expected an ISO 4217 code of money in",
        "(?s)EUR(.*)EUR -> EUR$1USD -> column currency: found \"USD\", expected EUR as in the first",
        "\n1,2031 -> \n7,2031 -> column entry: found \"7\", expected 1, since entries are numbered",
        "\n2,2031 -> \n1,2031 -> column entry: found \"1\", expected an entry that no other row has",
        "payment -> paymnt -> column kind: found \"paymnt\", expected one of box, correction,",
        "2031-01-07 -> 07.01.2031 -> column date: found \"07.01.2031\", expected a date such as",
        "5.00 -> 0.00 -> column amount: found \"0.00\", expected a number of at least 0.001",
        "5.00 -> five -> column amount: found \"five\", expected a number",
        "5.00 -> 5.005 -> column amount: found \"5.005\", expected an amount of whole minor units",
        "bo,ann -> ann,ann -> column receiver: found \"ann\", expected another than the giver",
        "bo,ann -> bo,cy -> expected the digest of this row and the one before. This row was changed",
        "[0-9a-f]{16} -> 1.2E+15 -> column digest: found \"1.2E+15\", expected 16 digits and letters",
        "digest -> dijest -> Maybe digest was meant."
      })
  void a_ledger(String change) throws IOException {
    Path ledger = folder.resolve("ledger.csv");
    for (int i = 0; i < 2; i++) {
      run(
          "ledger",
          ledger.toString(),
          "--add=payment",
          "--from=bo",
          "--to=ann",
          "--amount=5",
          "--on=2031-01-07");
    }
    String says = change(ledger, change);
    CommandRun run = run("ledger", ledger.toString());
    assertThat(run.exitCode()).as(run.out()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains(says);
  }

  private CommandRun settle(String more, String change) throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group("\"way\": \"equal\"");
    Path invoice = samples.invoice(more);
    String says = change.isEmpty() ? "" : change(invoice, change);
    CommandRun run =
        run(
            "settle",
            folder.toString(),
            invoice.toString(),
            "--profiles=" + folder.resolve("supplier-profiles"));
    assertThat(run.exitCode()).as(run.out()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains(says);
    return run;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"north\" -> \"nort\" -> found \"nort\", expected a supplier of a member's scenario: north. Maybe",
        "2031-01-05 -> 5.1.2031 -> found \"5.1.2031\", expected a date such as",
        "\"ann\" -> \"Ann\" -> found \"Ann\", expected one of the members ann, bo, cy, dee",
        "\"packs\": 2 -> \"packs\": 0 -> found 0, expected a whole number",
        "\"packs\": 2 -> \"pcaks\": 2 -> found a field \"pcaks\", expected only known fields. Maybe packs",
        "41.00 -> 41,00 -> found \"41,00\", expected an amount such as 12.50",
        "41.00 -> 41.001 -> found \"41.001\", expected an amount of whole minor units",
        "41.00 -> 14.00 -> found \"14.00\", expected 41.00, the sum of rows and charges",
        "\"bag\": 2 -> \"bag\": 3, \"wanted\": 11 -> found 11, expected at most the 10 pieces",
        "\"pieces\": 10 -> \"pieces\": 9 -> found 9 pieces of bag 2 of Mouse x10, expected all 10",
        "\"item\": \"Mouse\" -> \"item\": \"Hamster\" -> found \"Hamster x10\", expected a pack on the",
        "\"bag\": 2 -> \"bag\": 1 -> found 20 pieces of bag 1 of Mouse x10, expected all 10",
        "\"packs\": 2 -> \"packs\": 3 -> found \"41.00\", expected 51.00, the sum of rows",
        "\"item\": \"Mouse\" -> \"item\": \"Mous\" -> Maybe Mouse x10 was meant.",
        "\"member\": \"cy\" -> \"member\": \"cid\" -> found \"cid\", expected one of the members",
        "\"total\" -> \"total\": 1, \"total\" -> found \"total\" a second time, expected each"
      })
  void an_invoice(String change) throws IOException {
    settle("", change);
  }

  /** A bag that was not handed out cannot be lost: its refund was shared by all. */
  @Test
  void what_befell_an_order() throws IOException {
    assertThat(settle(InvoiceSamples.lost(7, 4), "").err())
        .contains("found 7, expected a bag of Mouse x10 among the portions");
    assertThat(settle(InvoiceSamples.lost(2, 4).replace("1.00", "0.005"), "").err())
        .contains("found \"0.005\", expected an amount of whole minor units");
    assertThat(settle(", \"droppedOut\": [\"ann\"]", "").err())
        .contains("found \"ann\", expected a member other than the host: bo, cy, dee.");
    assertThat(settle(", \"evened\": [{\"member\": \"bo\", \"more\": \"1.50\"}]", "").err())
        .contains("found amounts that come to 1.50, expected amounts that come to 0.");
  }
}
