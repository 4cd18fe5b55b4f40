package io.frostlot.sharing;

import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Range;
import io.frostlot.plan.Settlement;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Settles one invoice to the minor unit: pieces by the piece, the rest in the group's way among
 * those who wanted something of it. Where the way looks at subgroups, shares are those agreed, and
 * what the invoice differs from them is shared equally.
 */
public final class Settling {
  private final Group group;
  private final Sharing sharing;
  private final int decimals;

  public Settling(Group group, Sharing sharing) {
    this.group = group;
    this.sharing = sharing;
    decimals = Math.max(0, group.first().currency().getDefaultFractionDigits());
  }

  public Settlement settle(Invoice invoice) {
    Settlement.Account before = account(invoice.withoutMishaps(), Map.of());
    Map<String, Money> kept = new HashMap<>();
    if (group.terms().after().dropOut() == Group.DropOut.KEEPS_SHARE) {
      new Aftermath(invoice, group.terms().after())
          .dropped()
          .forEach(member -> kept.put(member, before.sheet(member).pays().shared()));
    }
    return new Settlement(group, invoice, before, account(invoice, kept));
  }

  /**
   * Who gets and pays what.
   *
   * @param kept shares of those who dropped out and still pay them
   */
  private Settlement.Account account(Invoice invoice, Map<String, Money> kept) {
    Aftermath after = new Aftermath(invoice, group.terms().after());
    List<String> members =
        group.names().stream()
            .filter(name -> of(after.charges(), name).anyMatch(p -> p.wanted() > 0))
            .toList();
    if (members.isEmpty()) {
      members = List.of(invoice.head().host());
    }
    Map<String, Money> pays = new LinkedHashMap<>();
    Money rest = after.total();
    for (String member : group.names()) {
      Money all = own(invoice, after, member).rounded(decimals).plus(beside(invoice, member));
      if (!members.contains(member) && !all.isZero()) {
        pays.put(member, all);
        rest = rest.minus(all);
      }
    }
    List<Burden> burdens = members.stream().map(m -> burden(invoice, after, m)).toList();
    List<Money> settled = Rounding.settle(shares(invoice, members, burdens, rest), rest, decimals);
    for (int i = 0; i < members.size(); i++) {
      pays.put(members.get(i), settled.get(i));
    }
    keep(kept, invoice, after, pays);
    List<Settlement.Sheet> sheets = sheets(invoice, after, pays, crediting(invoice, members));
    return new Settlement.Account(
        after.total(),
        after.lost(),
        sheets,
        Payments.fewest(group.names(), owes(sheets, invoice, after)));
  }

  /**
   * Who dropped out keeps its share of the charges as ordered; what has come to cost other than
   * that is the others' affair, in equal parts.
   */
  private void keep(
      Map<String, Money> kept, Invoice invoice, Aftermath after, Map<String, Money> pays) {
    List<String> others = pays.keySet().stream().filter(name -> !kept.containsKey(name)).toList();
    if (others.isEmpty()) {
      return;
    }
    Money more = Money.ZERO;
    for (Map.Entry<String, Money> share : kept.entrySet()) {
      Money now = own(invoice, after, share.getKey()).rounded(decimals).plus(share.getValue());
      more = more.plus(pays.getOrDefault(share.getKey(), Money.ZERO)).minus(now);
      pays.put(share.getKey(), now);
    }
    double[] equal = new double[others.size()];
    Arrays.fill(equal, more.toDouble() / equal.length);
    List<Money> parts = Rounding.settle(equal, more, decimals);
    for (int i = 0; i < equal.length; i++) {
      pays.merge(others.get(i), parts.get(i), Money::plus);
    }
  }

  private double[] shares(
      Invoice invoice, List<String> members, List<Burden> burdens, Money total) {
    Game game =
        Game.of(
            members,
            some ->
                some.size() == members.size() ? Range.exactly(total.toDouble()) : Range.exactly(0));
    Bill bill = new Bill(game, burdens);
    if (!group.terms().needsPlan()) {
      return sharing.of(bill, Way.of(group.terms().way()));
    }
    double agreed = members.stream().mapToDouble(m -> agreed(invoice, m)).sum();
    double[] shares = bill.ownAndPart(bill.common() - agreed, burden -> 1);
    for (int i = 0; i < shares.length; i++) {
      shares[i] += agreed(invoice, members.get(i));
    }
    return shares;
  }

  /** What somebody agreed to pay who was to get nothing of it. */
  private Money beside(Invoice invoice, String member) {
    boolean wants = of(invoice.portions(), member).anyMatch(p -> p.wanted() > 0);
    return wants || !group.terms().needsPlan()
        ? Money.ZERO
        : invoice.agreed().getOrDefault(member, Money.ZERO);
  }

  private static double agreed(Invoice invoice, String member) {
    return invoice.agreed().getOrDefault(member, Money.ZERO).toDouble();
  }

  private static Stream<Invoice.Portion> of(List<Invoice.Portion> portions, String member) {
    return portions.stream().filter(portion -> portion.member().equals(member));
  }

  private static Money goods(Invoice invoice, List<Invoice.Portion> portions, String member) {
    return of(portions, member)
        .map(portion -> invoice.price(portion.bag().pack(), portion.wanted()))
        .reduce(Money.ZERO, Money::plus);
  }

  private static Money own(Invoice invoice, Aftermath after, String member) {
    return goods(invoice, after.portions(), member)
        .plus(after.losses(member))
        .plus(invoice.evened().getOrDefault(member, Money.ZERO));
  }

  private static Burden burden(Invoice invoice, Aftermath after, String member) {
    Grams grams = Grams.ZERO;
    Litres litres = Litres.ZERO;
    for (Invoice.Portion portion : of(after.charges(), member).toList()) {
      int pieces = portion.bag().pack().pieces();
      var packed = portion.bag().pack().packed();
      grams = grams.plus(packed.grams().times((double) portion.wanted() / pieces));
      litres = litres.plus(new Litres(packed.litres().microlitres() * portion.wanted() / pieces));
    }
    return new Burden(
        own(invoice, after, member), goods(invoice, after.charges(), member), grams, litres);
  }

  /**
   * Who pays the host's credit: all others who have something of the order; nobody where a shop or
   * a show was gone to for one only.
   */
  private List<String> crediting(Invoice invoice, List<String> having) {
    boolean shipped =
        group.keepers().stream()
            .flatMap(keeper -> keeper.scenario().suppliers().stream())
            .anyMatch(it -> it.id().equals(invoice.head().supplier()) && !it.isPickUp());
    return having.stream()
        .filter(name -> !name.equals(invoice.head().host()))
        .filter(name -> shipped || having.size() > 1)
        .toList();
  }

  private List<Settlement.Sheet> sheets(
      Invoice invoice, Aftermath after, Map<String, Money> pays, List<String> payers) {
    List<Settlement.Sheet> sheets = new ArrayList<>();
    Money credit = payers.isEmpty() ? Money.ZERO : group.terms().hostCredit().rounded(decimals);
    double[] equal = new double[payers.size()];
    Arrays.fill(equal, credit.toDouble() / Math.max(1, payers.size()));
    List<Money> credits = Rounding.settle(equal, credit, decimals);
    for (String member : group.names()) {
      Money goods = goods(invoice, after.portions(), member).rounded(decimals);
      Money losses = after.losses(member).rounded(decimals);
      Money shared = pays.getOrDefault(member, goods.plus(losses)).minus(goods).minus(losses);
      Money its = member.equals(invoice.head().host()) ? credit.negated() : Money.ZERO;
      its = payers.contains(member) ? credits.get(payers.indexOf(member)) : its;
      sheets.add(
          new Settlement.Sheet(
              member,
              of(after.portions(), member).toList(),
              new Settlement.Pays(goods, losses, shared, its)));
    }
    return sheets;
  }

  /** The host has paid the invoice, and got back what the supplier paid back. */
  private static List<Money> owes(List<Settlement.Sheet> sheets, Invoice invoice, Aftermath after) {
    return sheets.stream()
        .map(
            sheet ->
                sheet.member().equals(invoice.head().host())
                    ? sheet.pays().total().minus(after.total())
                    : sheet.pays().total())
        .toList();
  }
}
