package io.frostlot.report;

import io.frostlot.plan.Ledger;
import io.frostlot.plan.Payment;
import io.frostlot.units.Money;
import java.util.List;

/** A letter about a ledger: balances, the payments that settle them, and every entry. */
public final class LedgerReport {
  private final Ledger ledger;
  private final List<Payment> payments;
  private final String digest;
  private final Wording wording;

  /**
   * A letter.
   *
   * @param payments that settle all balances
   * @param digest of the last entry
   */
  public LedgerReport(Ledger ledger, List<Payment> payments, String digest) {
    this.ledger = ledger;
    this.payments = List.copyOf(payments);
    this.digest = digest;
    wording = new Wording(ledger.currency());
  }

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    Page page = new TextPage(width);
    page.title("Frostlot: the ledger");
    if (ledger.entries().isEmpty()) {
      page.say("No entry yet.");
      return page.toString();
    }
    page.say(
        Wording.count(ledger.entries().size(), "entry", "entries")
            + " in "
            + ledger.currency()
            + ", none of them changed; the last has the digest "
            + digest
            + ".");
    page.heading("Balances");
    ledger.balances().forEach((name, balance) -> balance(page, name, balance));
    page.heading("Payments that settle them");
    for (Payment payment : payments) {
      page.amount(payment.from() + " pays " + payment.to(), wording.bare(payment.amount()));
    }
    if (payments.isEmpty()) {
      page.say("Nobody owes anybody anything.");
    }
    page.heading("Entries");
    page.table(entries());
    return page.toString();
  }

  private void balance(Page page, String name, Money balance) {
    String owes = balance.isZero() ? " is even" : balance.isNegative() ? " is owed" : " owes";
    page.amount(name + owes, wording.bare(balance.isNegative() ? balance.negated() : balance));
  }

  private Table entries() {
    Table table = Table.of("date", "kind", "from", "to", ">amount", "box", "note");
    for (Ledger.Entry entry : ledger.entries()) {
      table.row(
          Wording.date(entry.day()),
          entry.kind().id(),
          entry.value().from(),
          entry.value().to(),
          wording.bare(entry.value().amount()),
          entry.about().box(),
          entry.about().note());
    }
    return table;
  }
}
