package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.List;

/**
 * One invoice settled to the minor unit.
 *
 * @param before who would have got and paid what, had all gone as ordered
 * @param now who gets and pays what
 */
public record Settlement(Group group, Invoice invoice, Account before, Account now) {

  /**
   * Who gets and pays what.
   *
   * @param total to pay, what the supplier pays back taken off
   * @param lost what pieces cost that were wanted and lost, less what the supplier pays back
   * @param sheets by member, in the group's order
   * @param payments between members, as few as can be
   */
  public record Account(Money total, Money lost, List<Sheet> sheets, List<Payment> payments) {
    public Account {
      sheets = List.copyOf(sheets);
      payments = List.copyOf(payments);
    }

    public Sheet sheet(String member) {
      return sheets.stream().filter(s -> s.member().equals(member)).findFirst().orElseThrow();
    }
  }

  /** What one member gets and pays. */
  public record Sheet(String member, List<Invoice.Portion> portions, Pays pays) {
    public Sheet {
      portions = List.copyOf(portions);
    }
  }

  /**
   * Money of one member.
   *
   * @param goods piece by piece
   * @param losses for pieces that did not come or came spoiled, what was paid back taken off
   * @param shared its share of what cannot be counted by the piece
   * @param credit for or to the host, negative for the host
   */
  public record Pays(Money goods, Money losses, Money shared, Money credit) {
    public Money total() {
      return goods.plus(losses).plus(shared).plus(credit);
    }
  }

  /** What a member pays more than as ordered; negative where less. */
  public Money more(String member) {
    return now.sheet(member).pays().total().minus(before.sheet(member).pays().total());
  }
}
