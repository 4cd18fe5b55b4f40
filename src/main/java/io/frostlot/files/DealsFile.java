package io.frostlot.files;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Scenario;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Deals of one supplier, written as in its profile: {@code supplier} and any of {@code sales},
 * {@code orderDiscounts} and {@code freeShipping}; described by {@code deals.schema.json}.
 */
public final class DealsFile {
  private final Scenario scenario;
  private final Problems problems = new Problems();
  private final List<Deal> deals = new ArrayList<>();

  /**
   * A reader.
   *
   * @param scenario has the suppliers that deals may be of
   */
  public DealsFile(Scenario scenario) {
    this.scenario = scenario;
  }

  /** Takes up the deals of a file. */
  public DealsFile read(Path path) {
    String name = String.valueOf(path.getFileName());
    TextFile.read(path, name, problems).ifPresent(text -> read(text, name));
    return this;
  }

  /**
   * Takes up deals typed elsewhere.
   *
   * @param name of the place, for problems
   */
  public DealsFile read(String text, String name) {
    JsonText.parse(text, name, problems)
        .flatMap(json -> JsonSchema.named("schema/deals.schema.json").check(json, problems))
        .filter(checked -> checked.wrong().isEmpty())
        .map(JsonSchema.Checked::document)
        .ifPresent(this::add);
    return this;
  }

  /** All that went wrong. */
  public List<Problem> problems() {
    return problems.all();
  }

  public List<Deal> deals() {
    return List.copyOf(deals);
  }

  private void add(Json.Obj root) {
    Json.Text id = (Json.Text) root.get("supplier");
    Optional<Supplier> supplier =
        scenario.suppliers().stream().filter(s -> s.id().equals(id.value())).findFirst();
    if (supplier.isEmpty()) {
      List<String> ids = scenario.suppliers().stream().map(Supplier::id).toList();
      problems.add(new Problem(id.where(), id.shown(), "a supplier of the scenario: " + ids, ""));
      return;
    }
    requireWithinPlanning(root);
    PricesFile.Prices prices = new PricesFile.Prices(supplier.get().sheet().packs(), true);
    Promotions promotions = new Promotions(root, prices, problems);
    List<Deal> read = new ArrayList<>();
    for (Sale sale : promotions.sales()) {
      read.add(new Deal.OnPacks(id.value(), sale));
    }
    for (OrderTerms.Discount discount : promotions.discounts()) {
      read.add(new Deal.OnOrders(id.value(), discount));
    }
    for (OrderTerms.FreeShipping waiver : TermsPart.read(root, List.of()).freeShipping()) {
      read.add(new Deal.OnShipping(id.value(), waiver));
    }
    if (read.isEmpty() && problems.isEmpty()) {
      problems.add(
          new Problem(
              root.where(),
              root.shown(),
              "at least one of sales, orderDiscounts, freeShipping",
              ""));
    }
    read.forEach(deal -> addNew(deal, supplier.get(), id));
  }

  private void requireWithinPlanning(Json.Obj root) {
    for (String list : List.of("sales", "orderDiscounts", "freeShipping")) {
      for (Json.Obj json : root.objects(list)) {
        if (!json.period("when").overlaps(scenario.planning())) {
          problems.add(
              new Problem(
                  json.get("when").where(),
                  json.get("when").shown(),
                  "a day or more of the planning days " + Days.text(scenario.planning()),
                  "It lies outside the planning days: no order could take it."));
        }
      }
    }
  }

  private void addNew(Deal deal, Supplier supplier, Json.Text at) {
    boolean taken =
        !(deal instanceof Deal.OnShipping)
            && (supplier.sheet().sales().stream().anyMatch(s -> s.id().equals(deal.id()))
                || supplier.terms().discounts().stream().anyMatch(d -> d.id().equals(deal.id()))
                || deals.stream()
                    .anyMatch(d -> d.supplier().equals(supplier.id()) && d.id().equals(deal.id())));
    if (taken) {
      problems.add(
          new Problem(
              at.where(),
              Problem.quote(deal.id()),
              "an id that no other sale or discount of " + supplier.id() + " has",
              ""));
    }
    deals.add(deal);
  }
}
