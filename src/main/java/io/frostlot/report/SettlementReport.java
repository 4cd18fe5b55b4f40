package io.frostlot.report;

import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Ledger;
import io.frostlot.plan.Payment;
import io.frostlot.plan.Settlement;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.List;

/** A letter about one settled invoice: the new sheet, and what differs from the one as ordered. */
public final class SettlementReport {
  private final Settlement settlement;
  private final List<Booked> booked;
  private final Wording wording;

  /**
   * What a ledger has got of it.
   *
   * @param added nothing where it has all of it already
   * @param digest of the ledger's last entry
   */
  public record Booked(String file, List<Ledger.Entry> added, String digest) {
    public Booked {
      added = List.copyOf(added);
    }
  }

  /**
   * A letter.
   *
   * @param booked where it is added to a ledger
   */
  public SettlementReport(Settlement settlement, List<Booked> booked) {
    this.settlement = settlement;
    this.booked = List.copyOf(booked);
    wording = new Wording(settlement.group().first().currency());
  }

  /** As on the price sheet of whoever has it. */
  private String supplier(String id) {
    return settlement.group().keepers().stream()
        .flatMap(keeper -> keeper.scenario().suppliers().stream())
        .filter(supplier -> supplier.id().equals(id))
        .map(Supplier::name)
        .findFirst()
        .orElse(id);
  }

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    return TextPage.of(width, this::write);
  }

  /** One HTML document to read and to print; each sheet begins on new paper. */
  public String html() {
    return HtmlPage.of(this::write);
  }

  private void write(Page page) {
    Invoice.Head head = settlement.invoice().head();
    page.title(
        "Frostlot: the order of "
            + Wording.date(head.ordered())
            + " from "
            + supplier(head.supplier())
            + ", settled");
    page.say(
        settlement.group().name()
            + "; "
            + head.host()
            + " received it; money in "
            + wording.currency().getCurrencyCode()
            + ".");
    page.gap();
    page.amount("invoice", wording.bare(head.total()));
    if (isPaidBack()) {
      page.amount(
          "less what is paid back", wording.bare(head.total().minus(settlement.now().total())));
      page.total("to pay", wording.bare(settlement.now().total()));
    }
    happened(page);
    page.heading("Who pays what");
    page.table(pays());
    page.heading("Who owes what");
    for (Payment payment : settlement.now().payments()) {
      page.amount(payment.from() + " pays " + payment.to(), wording.bare(payment.amount()));
    }
    page.say(
        head.host()
            + " has paid the supplier"
            + (isPaidBack() ? ", and gets what is paid back." : "."));
    booked.forEach(it -> booked(it, page));
    page.foot(Cautions.inShort(true));
    settlement.now().sheets().forEach(sheet -> sheet(sheet, page));
    page.heading("When a box comes, and at every meal");
    Cautions.all(true).forEach(page::point);
  }

  private boolean isPaidBack() {
    return !settlement.now().total().equals(settlement.invoice().head().total());
  }

  private void booked(Booked it, Page page) {
    page.heading("In the ledger");
    for (Ledger.Entry entry : it.added()) {
      Payment value = entry.value();
      page.amount(
          "added, %s: %s gave %s".formatted(entry.kind().id(), value.from(), value.to()),
          wording.bare(value.amount()));
    }
    page.say(says(it));
  }

  /** Whether something was added, and the digest that the ledger now ends with. */
  public static String says(Booked it) {
    String added =
        it.added().isEmpty()
            ? "Nothing was added: " + it.file() + " has all of it already."
            : Wording.count(it.added().size(), "entry was", "entries were")
                + " added to "
                + it.file()
                + ".";
    return it.digest().isEmpty()
        ? added
        : added + " The last entry has the digest " + it.digest() + ".";
  }

  private void happened(Page page) {
    if (settlement.invoice().mishaps().isEmpty()) {
      return;
    }
    page.heading("After it was ordered");
    settlement.invoice().mishaps().forEach(mishap -> page.point(says(mishap)));
    Group.Afterwards agreed = settlement.group().terms().after();
    page.say(
        "Agreed beforehand: who drops out pays "
            + agreed.dropOut().says()
            + "; lost pieces are borne by "
            + agreed.loss().says()
            + ".");
    Money lost = settlement.now().lost();
    if (!bearsLosses() && !lost.isZero()) {
      page.amount(
          "lost pieces, less what is paid back, within what is shared",
          wording.bare(lost.rounded(digits())));
    }
  }

  private String says(Invoice.Mishap mishap) {
    if (mishap instanceof Invoice.DropsOut out) {
      return out.member() + " drops out.";
    }
    if (mishap instanceof Invoice.Takes takes) {
      return takes.member()
          + " takes "
          + some(takes.pieces(), takes.bag())
          + " from "
          + takes.from()
          + ".";
    }
    Invoice.Lost lost = (Invoice.Lost) mishap;
    return some(lost.pieces(), lost.bag())
        + " did not come or came spoiled; paid back "
        + wording.money(lost.refund())
        + ".";
  }

  /** Are lost pieces borne by some alone, not by all like shipping? */
  private boolean bearsLosses() {
    return settlement.group().terms().after().loss() != Group.Loss.ALL;
  }

  private static String some(int pieces, Invoice.Bag bag) {
    return pieces + " " + bag.pack().item().name() + " of bag " + bag.number();
  }

  private Table pays() {
    boolean changed = !settlement.invoice().mishaps().isEmpty();
    List<String> columns =
        new ArrayList<>(
            List.of("", ">goods", ">shared", ">credit", ">pays", ">as ordered", ">more"));
    if (bearsLosses()) {
      columns.add(2, ">losses");
    }
    Table table = Table.of(columns.toArray(String[]::new));
    for (Settlement.Sheet sheet : settlement.now().sheets()) {
      Settlement.Pays pays = sheet.pays();
      Money before = settlement.before().sheet(sheet.member()).pays().total();
      List<String> row = new ArrayList<>();
      row.add(sheet.member());
      row.add(wording.bare(pays.goods()));
      if (bearsLosses()) {
        row.add(wording.bare(pays.losses()));
      }
      row.add(wording.bare(pays.shared()));
      row.add(wording.bare(pays.credit()));
      row.add(wording.bare(pays.total()));
      row.add(wording.bare(before));
      row.add(changed ? wording.bare(settlement.more(sheet.member())) : "-");
      table.row(row.toArray(String[]::new));
    }
    return table;
  }

  /** What the sheet adds up to, on the paper that is handed out. */
  private void amounts(Settlement.Pays pays, Page page) {
    page.amount("goods, piece by piece, as far as wanted", wording.bare(pays.goods()));
    if (!pays.losses().isZero()) {
      page.amount("lost pieces, less what is paid back", wording.bare(pays.losses()));
    }
    page.amount(
        "share of charges, discounts, price breaks and pieces that nobody wants",
        wording.bare(pays.shared()));
    if (!pays.credit().isZero()) {
      page.amount("credit for the host", wording.bare(pays.credit()));
    }
    page.total("pays, " + wording.currency(), wording.bare(pays.total()));
  }

  private int digits() {
    return Math.max(0, wording.currency().getDefaultFractionDigits());
  }

  private void sheet(Settlement.Sheet sheet, Page page) {
    page.sheet("Sheet of " + sheet.member());
    Table table = Table.of("item", ">pieces", "from", ">wanted", ">goods");
    for (Invoice.Portion portion : sheet.portions()) {
      table.row(
          portion.bag().pack().item().name(),
          String.valueOf(portion.pieces()),
          Wording.bag(portion.bag().number(), portion.bag().pack().pieces()),
          String.valueOf(portion.wanted()),
          wording.bare(
              settlement
                  .invoice()
                  .price(portion.bag().pack(), portion.wanted())
                  .rounded(digits())));
    }
    if (table.isEmpty()) {
      page.say("Nothing of this order.");
    } else {
      page.table(table);
    }
    amounts(sheet.pays(), page);
    page.sign("Collected and paid");
  }
}
