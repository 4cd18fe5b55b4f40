package io.frostlot.report;

import io.frostlot.plan.Range;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Who tipped the order into one more box, all ways in one table, and whether somebody gains by
 * leaving.
 */
record ShareFindings(Shared shared, Wording wording) {

  void write(Page page) {
    tipped(page);
    ways(page);
    shared.findings().contentment().forEach(it -> new ReasonToLeave(it, wording).write(page));
  }

  private void tipped(Page page) {
    if (shared.findings().tipped().isEmpty()) {
      return;
    }
    page.heading("Who tipped it");
    for (Shared.Tipped tipped : shared.findings().tipped()) {
      String item = tipped.lines().get(0).pack().item().name();
      page.point(
          "Without the "
              + Wording.mass(tipped.grams().toDouble())
              + " of "
              + item
              + " in the order of "
              + Wording.date(tipped.order().slot().ordered())
              + " ("
              + whose(tipped)
              + "): "
              + Wording.count(tipped.boxesLess(), "box", "boxes")
              + " and "
              + wording.money(tipped.less())
              + " less.");
    }
  }

  private String whose(Shared.Tipped tipped) {
    List<String> parts = new ArrayList<>();
    for (Shared.Sheet sheet : shared.sheets()) {
      int pieces =
          sheet.collected().stream()
              .filter(some -> some.order().equals(tipped.order()))
              .filter(
                  some -> some.portion().pack().item().equals(tipped.lines().get(0).pack().item()))
              .mapToInt(some -> some.portion().pieces())
              .sum();
      if (pieces > 0) {
        parts.add(sheet.keeper() + " " + pieces);
      }
    }
    return String.join(", ", parts);
  }

  private void ways(Page page) {
    if (shared.ways().size() < 2) {
      return;
    }
    page.heading("Other ways to share");
    page.say("Cash of each member, before a host's credit.");
    List<String> headings = new ArrayList<>(List.of(""));
    shared.group().names().forEach(name -> headings.add(">" + name));
    Table table = Table.of(headings.toArray(String[]::new));
    for (Shared.WayRow way : shared.ways()) {
      List<String> cells = new ArrayList<>(List.of(way.way()));
      way.pays().forEach(amount -> cells.add(wording.bare(amount)));
      table.row(cells);
      if (!way.known().ranges().isEmpty()) {
        List<String> range = new ArrayList<>(List.of("surely within"));
        way.known().ranges().forEach(it -> range.add(range(it)));
        table.under(range);
      }
      if (!way.known().standardErrors().isEmpty()) {
        List<String> errors = new ArrayList<>(List.of("standard error"));
        way.known().standardErrors().forEach(it -> errors.add(bare(it)));
        table.under(errors);
      }
    }
    page.table(table);
    double widest = shared.findings().widest();
    if (!wording.isNothing(widest)) {
      page.say(
          "Costs of subgroups are known to within "
              + (Double.isFinite(widest) ? wording.atMost(widest) : "no amount at all")
              + "; the nucleolus is that of the middles.");
    }
    if (shared.ways().stream().anyMatch(way -> !way.known().standardErrors().isEmpty())) {
      page.say(
          "With so many members only a sample of the subgroups is planned: the Shapley value is"
              + " known but for its standard error, the nucleolus is not, and whether somebody"
              + " has a reason to leave is not known.");
    }
    shared.ways().forEach(way -> page.point(way.way() + ": " + way.says() + "."));
  }

  private String range(Range range) {
    return bare(range.least()) + " to " + bare(range.most());
  }

  private String bare(double amount) {
    return Double.isFinite(amount)
        ? wording.bare(new Money(BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_EVEN)))
        : "?";
  }
}
