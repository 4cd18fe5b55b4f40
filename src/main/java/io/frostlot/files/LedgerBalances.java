package io.frostlot.files;

import io.frostlot.plan.Ledger;
import io.frostlot.plan.Payment;
import io.frostlot.units.Money;
import java.util.List;

/**
 * What a ledger comes to, as JSON, described by {@code ledger.schema.json}, and as CSV (RFC 4180),
 * described by {@code balances.table-schema.json}.
 */
public final class LedgerBalances {
  private LedgerBalances() {}

  /**
   * The document.
   *
   * @param payments that settle all balances
   * @param digest of the last entry
   */
  public static String json(Ledger ledger, List<Payment> payments, String digest) {
    return JsonLines.document(
        json ->
            json.text("currency", ledger.currency().getCurrencyCode())
                .number("entries", ledger.entries().size())
                .text("digest", digest)
                .list(
                    "balances",
                    ledger.balances().entrySet(),
                    (line, balance) ->
                        line.text("name", balance.getKey())
                            .text("owes", money(ledger, balance.getValue())))
                .payments(payments, amount -> money(ledger, amount)));
  }

  public static String csv(Ledger ledger) {
    StringBuilder text = new StringBuilder(OrderSheets.line(List.of("name", "owes", "currency")));
    ledger
        .balances()
        .forEach(
            (name, owes) ->
                text.append(
                    OrderSheets.line(
                        List.of(
                            OrderSheets.harmless(name),
                            money(ledger, owes),
                            ledger.currency().getCurrencyCode()))));
    return text.toString();
  }

  private static String money(Ledger ledger, Money amount) {
    return amount.toText(ledger.currency().getDefaultFractionDigits());
  }
}
