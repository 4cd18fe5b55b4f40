package io.frostlot.report;

import io.frostlot.plan.Difference;
import io.frostlot.plan.SupplierFinding;
import io.frostlot.plan.World;
import io.frostlot.supply.Supplier;
import java.util.OptionalDouble;

/**
 * Findings about suppliers in words, each as soon as it is known.
 *
 * @param width characters in a line; 72 to 120 are used
 */
public record SupplierReport(World world, int width) {
  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  /** What is looked at. */
  public String head() {
    return TextPage.of(
        width, page -> page.title("Frostlot: the suppliers of " + world.scenario().name()));
  }

  /**
   * A finding under its heading.
   *
   * @param again was one of its kind told before?
   */
  public String text(SupplierFinding finding, boolean again) {
    Page page = new TextPage(width);
    if (finding instanceof SupplierFinding.All all) {
      page.heading("With all of them", again);
      page.say(
          "%s: %s, with reckoned costs and the days after."
              .formatted(
                  Differences.state(Difference.Side.of(all.plan())),
                  wording().money(all.plan().standing().money().rounded(world.decimals()))));
      page.gap();
    } else if (finding instanceof SupplierFinding.Part part) {
      page.point(
          way(part)
              + ": "
              + part.difference().stream()
                  .map(new Differences(wording())::verdict)
                  .findFirst()
                  .orElse("no plan was found")
              + ".");
    } else {
      sheets((SupplierFinding.Sheets) finding, page);
    }
    return page.toString();
  }

  private String way(SupplierFinding.Part part) {
    String name = world.supplier(part.supplier()).name();
    return part.way() == SupplierFinding.Way.ALONE ? name + " alone" : "Without " + name;
  }

  private void sheets(SupplierFinding.Sheets sheets, Page page) {
    page.heading("Price sheets by what is delivered, " + wording().currency().getCurrencyCode());
    Table table = Table.of("item", "from", ">g", ">100 g", ">landed", ">a meal", ">100 kcal");
    for (SupplierFinding.Price price : sheets.prices()) {
      Supplier supplier = world.supplier(price.supplier());
      table.row(
          price.pack().item().name(),
          supplier.id() + (supplier.isPickUp() ? " (fetched)" : ""),
          Wording.decimal(price.pack().item().grams().mean().toDouble()),
          wording().barely(price.per100g()),
          cell(price.landed()),
          cell(price.perMeal()),
          cell(price.per100kcal()));
    }
    page.table(table);
    page.say(
        "From the pack that is cheapest by the piece, at list price; landed: per 100 g with tax"
            + " and its share of shipping or of the trip, by mass, in the plans above; a meal: of"
            + " those it could be; 100 kcal: as fed (Small Animal Clinical Nutrition, 2010, table"
            + " 71-5). Equal grams are not equal food.");
  }

  private String cell(OptionalDouble amount) {
    return amount.isPresent() ? wording().barely(amount.getAsDouble()) : "";
  }
}
