package io.frostlot.app;

import io.frostlot.files.LedgerFile;
import io.frostlot.files.Problem;
import io.frostlot.plan.Ledger;
import io.frostlot.plan.Settlement;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Keeps a running ledger: entries are only ever added, after all before were held against their
 * digests.
 *
 * @param seen digest of an entry that must be there, or empty
 */
public record Bookkeeping(Path file, String seen) {

  /** What it came to. */
  public sealed interface Outcome {}

  /**
   * Something cannot be used; the file is as it was.
   *
   * @param problems at least one
   */
  public record Refused(List<Problem> problems) implements Outcome {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * It is as it should be.
   *
   * @param added entries that are new
   * @param digest of the last entry, or empty
   */
  public record Done(Ledger ledger, List<Ledger.Entry> added, String digest) implements Outcome {
    public Done {
      added = List.copyOf(added);
    }
  }

  /** As it stands; there must be one. */
  public Outcome read(Currency currency) {
    Optional<Problem> missing = LedgerFile.missing(file);
    return missing.isPresent()
        ? new Refused(List.of(missing.get()))
        : with(currency, ledger -> List.of());
  }

  /** Adds what a settled box comes to, or how it differs from what was added of it before. */
  public Outcome add(Settlement settlement, LocalDate day) {
    Currency currency = settlement.group().first().currency();
    return with(currency, ledger -> ledger.entries(settlement, day));
  }

  /** Adds one entry. */
  public Outcome add(Currency currency, Ledger.Entry entry) {
    return with(currency, ledger -> List.of(entry));
  }

  private Outcome with(Currency currency, Function<Ledger, List<Ledger.Entry>> more) {
    LedgerFile.Reading reading = LedgerFile.read(file, seen);
    if (reading instanceof LedgerFile.Refused refused) {
      return new Refused(refused.problems());
    }
    Ledger before = ((LedgerFile.Read) reading).ledger().orElse(new Ledger(currency, List.of()));
    if (!before.currency().equals(currency)) {
      return new Refused(List.of(LedgerFile.otherCurrency(file, before, currency)));
    }
    List<Ledger.Entry> added = more.apply(before);
    Ledger after = before.with(added);
    Optional<Problem> problem = added.isEmpty() ? Optional.empty() : LedgerFile.write(file, after);
    return problem.isPresent()
        ? new Refused(List.of(problem.get()))
        : new Done(after, added, LedgerFile.digest(after));
  }
}
