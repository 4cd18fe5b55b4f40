package io.frostlot.files;

import io.frostlot.plan.Ledger;
import io.frostlot.plan.Payment;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A ledger as CSV (RFC 4180), described by {@code ledger.table-schema.json}: one row an entry, each
 * with a digest of itself and of the row before, so that a row that was changed, taken out or moved
 * is noticed. It only ever grows, and is written whole or not at all.
 */
public final class LedgerFile {
  private static final String FIRST = "";
  private static final int DIGITS = 16;
  private static final String COPY =
      "Go back to a copy, and put right what is wrong by a further entry.";
  private static final TableSchema SCHEMA = TableSchema.named("ledger");

  private LedgerFile() {}

  /** What reading came to. */
  public sealed interface Reading {}

  /** Nothing was changed; empty where there is no such file yet. */
  public record Read(Optional<Ledger> ledger) implements Reading {}

  /**
   * Something was wrong.
   *
   * @param problems at least one
   */
  public record Refused(List<Problem> problems) implements Reading {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads it, and holds it against its digests.
   *
   * @param seen digest of an entry that must be there, or empty
   */
  public static Reading read(Path path, String seen) {
    Problems problems = new Problems();
    String name = String.valueOf(path.getFileName());
    List<Row> rows = new TableReader(SCHEMA, name, problems).readIfThere(path).rows();
    List<Ledger.Entry> entries = new ArrayList<>();
    List<String> digests = new ArrayList<>();
    String before = FIRST;
    for (Row row : rows) {
      check(row, rows.get(0), problems);
      if (problems.isEmpty()) {
        Ledger.Entry entry = entry(row);
        before = digest(before, entry, currency(rows.get(0)), entries.size() + 1);
        entries.add(entry);
        digests.add(row.text("digest"));
        if (!before.equals(row.text("digest"))) {
          changed(row, problems);
        } else if (row.integer("entry") != entries.size()) {
          row.wrong("entry", entries.size() + ", since entries are numbered by row", COPY);
        }
      }
    }
    if (!seen.isEmpty() && problems.isEmpty() && !digests.contains(seen)) {
      problems.add(
          new Problem(
              Where.file(name),
              "no entry with the digest " + Problem.quote(seen),
              "the entry that was there",
              "Entries at the end are missing, or it is another ledger: look for a copy."));
    }
    if (!problems.isEmpty()) {
      return new Refused(problems.all());
    }
    return new Read(
        rows.isEmpty()
            ? Optional.empty()
            : Optional.of(new Ledger(currency(rows.get(0)), entries)));
  }

  /** The complaint that there is none of this name yet. */
  public static Optional<Problem> missing(Path path) {
    return TextFile.isThere(path)
        ? Optional.empty()
        : Optional.of(
            new Problem(
                Where.file(path.toString()),
                "no such file",
                "a ledger",
                "A new one is made by what is added to it (ledger --add, settle --ledger)."));
  }

  /** Money of two currencies does not add up. */
  public static Problem otherCurrency(Path path, Ledger ledger, Currency expected) {
    return new Problem(
        Where.file(String.valueOf(path.getFileName())),
        "money in " + ledger.currency(),
        expected.getCurrencyCode(),
        "Each currency needs a ledger of its own.");
  }

  private static void changed(Row row, Problems problems) {
    problems.add(
        new Problem(
            row.at("digest"),
            Problem.quote(row.text("digest")),
            "the digest of this row and the one before",
            "This row was changed, or one before it changed, moved or taken out. " + COPY));
  }

  private static void check(Row row, Row first, Problems problems) {
    String code = row.text("currency");
    if (Currencies.of(code).isEmpty()) {
      row.wrong("currency", "an ISO 4217 code of money in use, such as EUR", "");
    } else if (!code.equals(first.text("currency"))
        && Currencies.of(first.text("currency")).isPresent()) {
      row.wrong("currency", first.text("currency") + " as in the first row", "");
    }
    if (row.text("giver").equals(row.text("receiver"))) {
      row.wrong("receiver", "another than the giver", "");
    }
    if (problems.isEmpty()
        && !money(row).rounded(currency(row).getDefaultFractionDigits()).equals(money(row))) {
      row.wrong("amount", "an amount of whole minor units", "");
    }
  }

  private static Currency currency(Row row) {
    return Currency.getInstance(row.text("currency"));
  }

  private static Money money(Row row) {
    return new Money(row.number("amount"));
  }

  private static Ledger.Entry entry(Row row) {
    Ledger.Kind kind =
        Stream.of(Ledger.Kind.values())
            .filter(it -> it.id().equals(row.text("kind")))
            .findFirst()
            .orElseThrow();
    return new Ledger.Entry(
        row.date("date"),
        kind,
        new Payment(typed(row.text("giver")), typed(row.text("receiver")), money(row)),
        new Ledger.About(typed(row.textOr("box", "")), typed(row.textOr("note", ""))));
  }

  /** Without the apostrophe that keeps a spreadsheet from running it. */
  private static String typed(String cell) {
    return cell.startsWith("'") && OrderSheets.harmless(cell.substring(1)).equals(cell)
        ? cell.substring(1)
        : cell;
  }

  /** Digest of the last entry; nothing for none. */
  public static String digest(Ledger ledger) {
    String digest = FIRST;
    for (int i = 0; i < ledger.entries().size(); i++) {
      digest = digest(digest, ledger.entries().get(i), ledger.currency(), i + 1);
    }
    return digest;
  }

  private static String digest(String before, Ledger.Entry entry, Currency currency, int number) {
    List<String> cells = new ArrayList<>(cells(entry, currency, number));
    cells.add(before);
    return Digest.of(cells).substring(0, DIGITS);
  }

  /** Writes it over what is there, whole or not at all; a problem where that cannot be. */
  public static Optional<Problem> write(Path path, Ledger ledger) {
    StringBuilder text = new StringBuilder(OrderSheets.line(SCHEMA.names()));
    String digest = FIRST;
    for (int i = 0; i < ledger.entries().size(); i++) {
      Ledger.Entry entry = ledger.entries().get(i);
      digest = digest(digest, entry, ledger.currency(), i + 1);
      List<String> cells =
          new ArrayList<>(
              cells(entry, ledger.currency(), i + 1).stream().map(OrderSheets::harmless).toList());
      cells.add(digest);
      text.append(OrderSheets.line(cells));
    }
    return new WholeFile(path).write(text.toString());
  }

  private static List<String> cells(Ledger.Entry entry, Currency currency, int number) {
    return List.of(
        String.valueOf(number),
        entry.day().toString(),
        entry.kind().id(),
        entry.about().box(),
        entry.value().from(),
        entry.value().to(),
        entry.value().amount().toText(currency.getDefaultFractionDigits()),
        currency.getCurrencyCode(),
        entry.about().note());
  }
}
