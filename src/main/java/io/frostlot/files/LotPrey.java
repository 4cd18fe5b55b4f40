package io.frostlot.files;

import io.frostlot.supply.Item;
import java.util.List;
import java.util.Optional;

/** Finds out what the prey of a row of stock.csv or placed.csv is. */
record LotPrey(ScenarioFile scenario, List<ProfileFile.Offer> offers) {

  /** Empty, with a problem added, where it cannot be known. */
  Optional<Item> of(Row row) {
    if (!row.together("supplier", "item") || !row.exactlyOne("supplier", "kind")) {
      return Optional.empty();
    }
    if (row.has("kind")) {
      String lot = row.text("lot");
      return Prey.of(row, scenario.kinds()).map(prey -> prey.item("stock/" + lot, lot));
    }
    row.forbid("with supplier", Prey.COLUMNS);
    return sold(row);
  }

  private Optional<Item> sold(Row row) {
    String id = row.text("supplier");
    List<String> chosen = scenario.suppliers().stream().map(Json.Text::value).toList();
    if (!chosen.contains(id)) {
      if (scenario.sound("suppliers")) {
        row.wrong(
            "supplier",
            "one of the scenario's suppliers"
                + (chosen.isEmpty() ? "" : " " + String.join(", ", chosen)),
            "Prey of another supplier is described by kind and grams.");
      }
      return Optional.empty();
    }
    Optional<ProfileFile.Offer> offer =
        offers.stream().filter(it -> it.id().equals(id)).findFirst();
    Optional<Item> item = offer.flatMap(it -> it.prices().item(row.text("item")));
    if (item.isEmpty() && offer.filter(it -> it.prices().whole()).isPresent()) {
      List<String> names =
          offer.get().prices().packs().stream().map(pack -> pack.item().name()).toList();
      row.wrong("item", "an item of " + id + "/prices.csv", Nearest.hint(row.text("item"), names));
    }
    return item;
  }
}
