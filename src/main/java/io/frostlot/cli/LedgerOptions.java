package io.frostlot.cli;

import io.frostlot.app.Bookkeeping;
import io.frostlot.files.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a ledger is kept. */
final class LedgerOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Day of what is added to the ledger (default: today).")
  private String on = "";

  @Option(
      names = "--seen",
      paramLabel = "DIGEST",
      description = "Digest of an entry that must be in the ledger, such as the last one seen.")
  private String seen = "";

  boolean isDated() {
    return !on.isEmpty();
  }

  boolean isTyped() {
    return isDated() || !seen.isEmpty();
  }

  LocalDate day() {
    try {
      return on.isEmpty() ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(on);
    } catch (DateTimeParseException e) {
      throw wrong("--on", on, "a date such as 2031-01-31");
    }
  }

  Bookkeeping of(Path file) {
    return new Bookkeeping(file, seen);
  }

  /** Shows why nothing was written; returns the exit code. */
  static int refuse(Desk desk, List<Problem> problems) {
    return desk.refuse(problems, "The ledger is as it was.");
  }

  /** A complaint about what was typed; to be thrown. */
  ParameterException wrong(String option, String found, String expected) {
    String shown = found.isEmpty() ? "nothing" : "\"" + found + "\"";
    return new ParameterException(
        spec.commandLine(), option + ": found " + shown + ", expected " + expected);
  }
}
