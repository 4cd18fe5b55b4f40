package io.frostlot.cli;

import io.frostlot.app.Bookkeeping;
import io.frostlot.files.Currencies;
import io.frostlot.files.LedgerBalances;
import io.frostlot.plan.Ledger;
import io.frostlot.plan.Payment;
import io.frostlot.report.LedgerReport;
import io.frostlot.sharing.Payments;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code ledger FILE}: who owes what over many boxes, and entries by hand. */
@Command(
    name = "ledger",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Shows who owes what over many boxes; adds a payment or another entry.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:done", "1:a fault of the program", "2:input problems"})
final class LedgerCommand implements Callable<Integer> {
  private static final String AMOUNT = "[0-9]{1,7}([.][0-9]{1,6})?";
  private final Desk desk;

  @Parameters(paramLabel = "FILE.csv", description = "The ledger; a new one is made by --add.")
  private Path file = Usual.NOT_GIVEN;

  @Option(
      names = "--add",
      paramLabel = "KIND",
      description = "Add an entry: payment, credit, short-count, late-pick-up or correction.")
  private String kind = "";

  @Option(names = "--from", paramLabel = "NAME", description = "Who gives money, goods, service.")
  private String giver = "";

  @Option(names = "--to", paramLabel = "NAME", description = "Who receives it.")
  private String receiver = "";

  @Option(names = "--amount", paramLabel = "MONEY", description = "Its value.")
  private String amount = "";

  @Option(names = "--box", paramLabel = "TEXT", description = "Which order it is about.")
  private String box = "";

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything, for the reader.")
  private String note = "";

  @Option(
      names = "--currency",
      paramLabel = "CODE",
      defaultValue = "EUR",
      description = "ISO 4217 code of its money (default: ${DEFAULT-VALUE}).")
  private String currency = "EUR";

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, json or csv (default: ${DEFAULT-VALUE}).")
  private Format format = Format.TEXT;

  @Mixin private LedgerOptions options = new LedgerOptions();

  LedgerCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    refuseWithoutKind();
    Bookkeeping book = options.of(file);
    Bookkeeping.Outcome outcome =
        kind.isEmpty() ? book.read(money()) : book.add(money(), entry(money()));
    if (outcome instanceof Bookkeeping.Refused refused) {
      return LedgerOptions.refuse(desk, refused.problems());
    }
    Bookkeeping.Done done = (Bookkeeping.Done) outcome;
    List<Payment> payments = Payments.of(done.ledger().balances());
    desk.terminal()
        .out()
        .print(
            switch (format) {
              case TEXT ->
                  new LedgerReport(done.ledger(), payments, done.digest())
                      .text(desk.terminal().columns());
              case JSON -> LedgerBalances.json(done.ledger(), payments, done.digest());
              case CSV -> LedgerBalances.csv(done.ledger());
            });
    return desk.terminal().printed();
  }

  /** What describes an entry is nothing without one. */
  private void refuseWithoutKind() {
    if (kind.isEmpty()
        && (options.isDated() || !(giver + receiver + amount + box + note).isEmpty())) {
      throw options.wrong("--add", kind, "one of " + kinds() + ", since an entry is described");
    }
  }

  private Currency money() {
    return Currencies.of(currency)
        .orElseThrow(() -> options.wrong("--currency", currency, "an ISO 4217 code such as EUR"));
  }

  private Ledger.Entry entry(Currency money) {
    Ledger.Kind found =
        Arrays.stream(Ledger.Kind.values())
            .filter(it -> it != Ledger.Kind.BOX && it.id().equals(kind))
            .findFirst()
            .orElseThrow(() -> options.wrong("--add", kind, "one of " + kinds()));
    name("--from", giver);
    name("--to", receiver);
    if (giver.equals(receiver)) {
      throw options.wrong("--to", receiver, "another than --from");
    }
    text("--box", box, 150);
    text("--note", note, 500);
    Money value = amount.matches(AMOUNT) ? new Money(new BigDecimal(amount)) : Money.ZERO;
    if (value.isZero() || !value.rounded(money.getDefaultFractionDigits()).equals(value)) {
      throw options.wrong(
          "--amount", amount, "an amount above 0 of whole minor units, such as 12.50");
    }
    return new Ledger.Entry(
        options.day(), found, new Payment(giver, receiver, value), new Ledger.About(box, note));
  }

  private void name(String option, String name) {
    if (name.isBlank() || !name.equals(name.strip())) {
      throw options.wrong(option, name, "a name");
    }
    text(option, name, 40);
  }

  private void text(String option, String text, int most) {
    if (text.length() > most || text.chars().anyMatch(Character::isISOControl)) {
      throw options.wrong(option, text, "one line of at most " + most + " characters");
    }
  }

  private static String kinds() {
    return Arrays.stream(Ledger.Kind.values())
        .filter(it -> it != Ledger.Kind.BOX)
        .map(Ledger.Kind::id)
        .collect(Collectors.joining(", "));
  }
}
