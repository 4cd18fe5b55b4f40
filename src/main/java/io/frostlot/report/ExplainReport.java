package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.Difference;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.util.stream.Collectors;

/**
 * Reasons in words, each as soon as it is known.
 *
 * @param width characters in a line; 72 to 120 are used
 */
public record ExplainReport(World world, int width) {
  private Differences differences() {
    return new Differences(new Wording(world.scenario().currency()));
  }

  /** What is looked at. */
  public String head() {
    return TextPage.of(
        width,
        page ->
            page.title("Frostlot: why the plan for " + world.scenario().name() + " is as it is"));
  }

  /**
   * A finding under its heading.
   *
   * @param again was one of its kind told before?
   */
  public String text(ExplainFinding finding, boolean again) {
    Page page = new TextPage(width);
    if (finding instanceof ExplainFinding.Tight tight) {
      tight(tight, again, page);
    } else if (finding instanceof ExplainFinding.WhyNow now) {
      page.heading("Why now and not later");
      page.say(
          "Without ordering from %s by %s, only later: %s."
              .formatted(
                  world.supplier(now.slot().supplier()).name(),
                  Wording.day(now.slot().ordered()),
                  differences().verdict(now.difference())));
      page.heading("What each rule costs, and each size at its supplier");
    } else if (finding instanceof ExplainFinding.RuleCost rule) {
      rule.difference()
          .forEach(
              it ->
                  page.point(
                      Wording.capital(rule.without())
                          + WishText.lacking(rule.lacking())
                          + ": "
                          + differences().verdict(it)
                          + "."));
    } else if (finding instanceof ExplainFinding.WishCost wish) {
      if (again) {
        page.gap();
      } else {
        page.heading("With each wish and without it");
      }
      new WishText(world).write(wish, page);
    } else if (finding instanceof ExplainFinding.FedWithout fed) {
      WishText.write(fed, page);
    } else {
      why((ExplainFinding.WhySupplier) finding, page);
    }
    return page.toString();
  }

  /** Said at the end. */
  public String end() {
    Page page = new TextPage(width);
    page.gap();
    page.say(
        "Each is planned again with that one thing changed. What rules cost does not add up: two of"
            + " them away together can save more or less than both apart.");
    return page.toString();
  }

  private void tight(ExplainFinding.Tight tight, boolean again, Page page) {
    Wording wording = differences().wording();
    page.heading("The plan", again);
    page.say(
        "%s: %s, with reckoned costs and the days after."
            .formatted(
                Differences.state(Difference.Side.of(tight.plan())),
                wording.money(tight.plan().standing().money().rounded(world.decimals()))));
    page.heading("What is tight");
    if (tight.tight().isEmpty()) {
      page.say("No limit is used to more than seven tenths.");
      return;
    }
    Table table = Table.of(">full", ">used", ">limit", "rule", "where");
    for (Books.Use use : tight.tight()) {
      table.row(
          Wording.percent(use.used() / use.limit()),
          Wording.decimal(use.used()),
          Wording.decimal(use.limit()),
          Differences.rule(use.rule()),
          Wording.inWords(use.where()));
    }
    page.table(table);
  }

  /** Such as "2 x Hopper, 25 a bag, from Hillside". */
  private String instead(ExplainFinding.Instead row) {
    Supplier supplier = world.supplier(row.supplier());
    Pack pack =
        supplier.sheet().packs().stream()
            .filter(it -> it.id().equals(row.packId()))
            .findFirst()
            .orElseThrow();
    String bag = pack.pieces() == 1 ? "" : ", " + pack.pieces() + " a bag,";
    return row.packs() + " x " + pack.item().name() + bag + " from " + supplier.name();
  }

  private void why(ExplainFinding.WhySupplier why, Page page) {
    String instead = why.instead().stream().map(this::instead).collect(Collectors.joining(", "));
    page.point(
        "%s (%s g) not from %s: %s%s."
            .formatted(
                why.item().name(),
                Wording.decimal(why.item().grams().mean().toDouble()),
                world.supplier(why.supplier()).name(),
                differences().verdict(why.difference()),
                instead.isEmpty() ? "" : "; instead " + instead));
  }
}
