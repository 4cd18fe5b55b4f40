package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Order;
import io.frostlot.plan.OtherPrey;
import io.frostlot.plan.Payment;
import io.frostlot.plan.Shared;
import io.frostlot.plan.Standing;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A letter about a shared plan, with one sheet for each member to sign. */
public final class ShareReport {
  private final Shared shared;
  private final List<String> warnings;
  private final Wording wording;

  public ShareReport(Shared shared, List<String> warnings) {
    this.shared = shared;
    this.warnings = List.copyOf(warnings);
    wording = new Wording(shared.group().first().currency());
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
    page.title("Frostlot: a joint order for " + shared.group().name());
    summary(page);
    warnings.forEach(page::point);
    shared.parts().stream()
        .flatMap(part -> OtherPrey.sentences(part.world(), part.plan()).stream())
        .forEach(page::point);
    orders(page, "Ordered together", true);
    orders(page, "Ordered by each alone", false);
    whoPays(page);
    new ShareFindings(shared, wording).write(page);
    page.heading("Who owes what");
    if (shared.payments().isEmpty()) {
      page.say("Nobody owes anybody anything.");
    }
    for (Payment payment : shared.payments()) {
      page.amount(payment.from() + " pays " + payment.to(), wording.bare(payment.amount()));
    }
    if (!shared.invoices().isEmpty()) {
      page.say("The host has paid the supplier.");
    }
    page.foot(Cautions.inShort(isShipped()));
    for (Shared.Sheet sheet : shared.sheets()) {
      new MemberSheet(shared, wording).write(sheet, page);
    }
    page.heading("When a box comes, and at every meal");
    Cautions.all(isShipped()).forEach(page::point);
  }

  private void summary(Page page) {
    page.say(
        String.join(", ", shared.group().names())
            + "; "
            + Wording.date(shared.group().first().planning().from())
            + " to "
            + Wording.date(shared.group().first().planning().to())
            + "; money in "
            + wording.currency().getCurrencyCode()
            + ".");
    page.gap();
    page.amount("cash, all together", wording.bare(sum(it -> it.pays().total())));
    page.amount("reckoned, and for the days after", wording.bare(sum(Shared.Account::later)));
    page.amount(
        "each alone, cash and reckoned",
        between(least(Shared.Account::aloneAtLeast), sum(Shared.Account::alone), wording));
    page.amount(
        "saved by ordering together",
        between(least(Shared.Account::sureSaving), sum(Shared.Account::saving), wording));
    new Savings(shared.sheets(), wording).mayBeNone(page);
    shared.parts().forEach(part -> sure(part, page));
  }

  /** What is known of the best own plans, and so of what is saved, as far as it goes. */
  static String between(Optional<Money> least, Money most, Wording wording) {
    if (least.isEmpty()) {
      return "at most " + wording.bare(most);
    }
    return least.get().compareTo(most) < 0
        ? wording.bare(least.get()) + " to " + wording.bare(most)
        : wording.bare(most);
  }

  private void sure(Shared.Part part, Page page) {
    Standing standing = part.answer().plan().standing();
    int unmet = standing.unmet();
    if (unmet > 0) {
      page.say(
          Wording.count(unmet, "meal is", "meals are") + " not met; see the members' own plans.");
    }
    String who = String.join(", ", part.keepers()) + ": ";
    Optional<Gap> gap = Gap.of(part.answer());
    if (part.answer() instanceof Answer.Proven) {
      page.say(who + "proven best.");
    } else if (gap.isPresent()) {
      page.say(
          who
              + "the best found, at most "
              + wording.atMost(gap.get().amount())
              + " above the best possible ("
              + Wording.decimal(gap.get().percent())
              + " % of cash and reckoned).");
    } else {
      page.say(who + "the best found; how far from the best possible is not known.");
    }
  }

  private void orders(Page page, String heading, boolean joint) {
    boolean none = shared.parts().stream().noneMatch(part -> part.has(joint));
    if (none && joint) {
      page.say(
          "Nothing is ordered together: no joint order that was found comes cheaper than each"
              + " ordering alone.");
    }
    if (!none) {
      page.heading(heading);
      shared.parts().forEach(part -> orders(part, joint, page));
    }
  }

  private void orders(Shared.Part part, boolean joint, Page page) {
    for (Order order : part.plan().orders()) {
      if (part.isJoint(order) != joint) {
        continue;
      }
      Supplier supplier = part.world().supplier(order.slot().supplier());
      Books.Ledger ledger = part.answer().plan().books().ledger(order.slot());
      page.entry(
          supplier.name()
              + (supplier.isPickUp() ? ", fetched by " : ", to ")
              + part.buyer(order)
              + (joint ? ", for " + names(part.takers(order)) : ""));
      page.say(
          "order by "
              + Wording.day(order.slot().ordered())
              + "; comes "
              + Wording.arrival(order.slot().arrivesEarliest(), order.slot().arrivesLatest())
              + (supplier.isPickUp()
                  ? ""
                  : "; " + Wording.count(order.boxes().count(), "box", "boxes")));
      Table table = Table.of("", "", ">");
      for (Order.Line line : order.lines()) {
        table.row(
            "  %s x %s, %s a bag"
                .formatted(line.packs(), line.pack().item().name(), line.pack().pieces()),
            "list " + wording.bare(line.pack().price()),
            Wording.mass(line.pack().item().grams().mean().toDouble() * line.pieces()));
      }
      page.table(table);
      page.amount(
          "charges and tax, less discounts and price breaks", wording.bare(rest(order, ledger)));
      page.total("to pay", wording.bare(ledger.total()));
    }
  }

  /** What leads from the list prices shown to what is paid. */
  private static Money rest(Order order, Books.Ledger ledger) {
    return order.lines().stream()
        .map(line -> line.pack().price().times(line.packs()))
        .reduce(ledger.total(), Money::minus);
  }

  private void whoPays(Page page) {
    page.heading("Who pays what");
    Shared.WayRow way = shared.ways().get(0);
    page.say("What cannot be counted by the piece is shared: " + way.says() + ".");
    Table table = Table.of("", ">goods", ">shared", ">own orders", ">credit", ">pays", ">saves");
    for (Shared.Sheet sheet : shared.sheets()) {
      Shared.Pays pays = sheet.account().pays();
      table.row(
          sheet.keeper(),
          wording.bare(pays.goods()),
          wording.bare(pays.shared()),
          wording.bare(pays.own()),
          wording.bare(pays.credit()),
          wording.bare(pays.total()),
          between(sheet.account().sureSaving(), sheet.account().saving(), wording));
    }
    page.table(table);
    new Savings(shared.sheets(), wording).areLosses(page);
    if (shared.invoices().stream().anyMatch(it -> !it.evened().isEmpty())) {
      page.say("Members alike in all but their names pay the same, whoever gets which pieces.");
    }
  }

  private boolean isShipped() {
    return shared.parts().stream()
        .flatMap(part -> part.plan().orders().stream())
        .anyMatch(order -> order.boxes().count() > 0);
  }

  /** Of all keepers. */
  private Money sum(Function<Shared.Account, Money> amount) {
    return shared.sheets().stream()
        .map(sheet -> amount.apply(sheet.account()))
        .reduce(Money.ZERO, Money::plus);
  }

  /** Of all keepers; empty where it is not known of one. */
  private Optional<Money> least(Function<Shared.Account, Optional<Money>> amount) {
    List<Money> known =
        shared.sheets().stream().flatMap(it -> amount.apply(it.account()).stream()).toList();
    return known.size() < shared.sheets().size()
        ? Optional.empty()
        : known.stream().reduce(Money::plus);
  }

  /** Such as "Ash, Bramble and Clay". */
  static String names(List<String> names) {
    return names.size() < 2
        ? String.join("", names)
        : names.stream().limit(names.size() - 1L).collect(Collectors.joining(", "))
            + " and "
            + names.get(names.size() - 1);
  }
}
