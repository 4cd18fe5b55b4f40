package io.frostlot.report;

import io.frostlot.plan.Division;
import io.frostlot.plan.Order;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One member's sheet: what to collect, what it costs, what it would have cost alone, a line to
 * sign.
 */
record MemberSheet(Shared shared, Wording wording) {

  void write(Shared.Sheet sheet, Page page) {
    page.sheet("Sheet of " + sheet.keeper());
    Table table = Table.of("collect", "item", ">pieces", ">", "from", ">wanted", ">goods");
    for (List<Shared.Collected> alike : alike(sheet.collected())) {
      Shared.Collected some = alike.get(0);
      table.row(
          Wording.date(some.day()),
          some.portion().pack().item().name(),
          String.valueOf(some.portion().pieces() * alike.size()),
          mass(alike),
          from(alike),
          String.valueOf(alike.stream().mapToInt(Shared.Collected::wanted).sum()),
          wording.bare(
              alike.stream()
                  .map(Shared.Collected::goods)
                  .reduce(Money.ZERO, Money::plus)
                  .rounded(digits())));
    }
    if (table.isEmpty()) {
      page.say("Nothing of a joint order.");
    } else {
      page.table(table);
    }
    Shared.Meals meals = shared.partOf(sheet.keeper()).meals(sheet.keeper());
    page.say(
        meals.met() == meals.all()
            ? "All meals of the planning days are met (" + meals.all() + ")."
            : meals.met() + " of " + meals.all() + " meals of the planning days are met.");
    Shared.Pays pays = sheet.account().pays();
    page.amount("goods, piece by piece, as far as wanted", wording.bare(pays.goods()));
    page.amount(
        "share of charges, discounts, price breaks and pieces that nobody wants",
        wording.bare(pays.shared()));
    if (!pays.own().isZero()) {
      page.amount("own orders", wording.bare(pays.own()));
    }
    if (!pays.credit().isZero()) {
      page.amount("credit for the host", wording.bare(pays.credit()));
    }
    page.total("pays, " + wording.currency(), wording.bare(pays.total()));
    page.amount("reckoned, and for the days after", wording.bare(sheet.account().later()));
    Shared.Account account = sheet.account();
    page.amount(
        "alone it would have been",
        ShareReport.between(account.aloneAtLeast(), account.alone(), wording));
    page.amount("saved", ShareReport.between(account.sureSaving(), account.saving(), wording));
    for (Shared.Part part : shared.parts()) {
      if (part.host().equals(sheet.keeper())) {
        packing(part, page);
      }
    }
    if (!sheet.collected().isEmpty() || !pays.total().equals(pays.own())) {
      page.sign("Collected and paid");
    }
  }

  private int digits() {
    return Math.max(0, wording.currency().getDefaultFractionDigits());
  }

  /** Whole bags of one row, day and order together, each portion by itself. */
  private static List<List<Shared.Collected>> alike(List<Shared.Collected> collected) {
    Map<List<Object>, List<Shared.Collected>> alike = new LinkedHashMap<>();
    for (Shared.Collected some : collected) {
      Division.Portion portion = some.portion();
      Object which = portion.isWhole() ? "whole" : portion.bag();
      alike
          .computeIfAbsent(
              List.of(some.order().slot(), some.day(), portion.pack(), which),
              key -> new ArrayList<>())
          .add(some);
    }
    return List.copyOf(alike.values());
  }

  /** A bag that is cut is told by its number in the order. */
  private static String from(List<Shared.Collected> alike) {
    Division.Portion portion = alike.get(0).portion();
    return portion.isWhole()
        ? Wording.count(alike.size(), "bag", "bags") + " of " + portion.pack().pieces()
        : Wording.bag(portion.bag(), portion.pack().pieces());
  }

  private static String mass(List<Shared.Collected> alike) {
    return Wording.mass(alike.stream().mapToDouble(some -> some.grams().toDouble()).sum());
  }

  /** What the host hands to whom, order by order. */
  private void packing(Shared.Part part, Page page) {
    for (Order order : part.plan().orders()) {
      if (!part.isJoint(order)) {
        continue;
      }
      page.entry(
          "To hand out of the order of "
              + Wording.date(order.slot().ordered())
              + " from "
              + part.world().supplier(order.slot().supplier()).name()
              + ":");
      for (Shared.Sheet other : shared.sheets()) {
        List<Shared.Collected> of =
            other.collected().stream().filter(some -> some.order().equals(order)).toList();
        for (List<Shared.Collected> alike : alike(of)) {
          Shared.Collected some = alike.get(0);
          page.point(
              other.keeper()
                  + ", "
                  + Wording.date(some.day())
                  + ": "
                  + some.portion().pieces() * alike.size()
                  + " "
                  + some.portion().pack().item().name()
                  + ", "
                  + from(alike)
                  + ", "
                  + mass(alike));
        }
      }
    }
  }
}
