package io.frostlot.files;

import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Puts a supplier together from the parts of its profile; a part that is wrong is reported. */
record SupplierParts(JsonSchema.Checked json, PricesFile.Prices prices, Problems problems) {

  /** Empty where a part that is always needed is not there. */
  Optional<Supplier> supplier(String id, ScenarioFile scenario) {
    Json.Obj root = json.document();
    Promotions promotions = new Promotions(root, prices, problems);
    Supplier.PriceSheet sheet =
        new Supplier.PriceSheet(
            root.has("priceSheetDate") ? root.date("priceSheetDate") : LocalDate.EPOCH,
            prices.packs(),
            promotions.breaks(),
            promotions.sales());
    List<OrderTerms.Discount> discounts = promotions.discounts();
    return carriage(scenario)
        .filter(carriage -> json.wrong().isEmpty())
        .map(
            carriage ->
                new Supplier(
                    id,
                    root.text("name"),
                    sheet,
                    TermsPart.read(root, discounts),
                    BoxingPart.read(root),
                    carriage.shipping(),
                    carriage.delivery()));
  }

  /** How it comes and what that costs. */
  private record Carriage(Delivery delivery, Shipping shipping) {}

  private Optional<Carriage> carriage(ScenarioFile scenario) {
    if (!json.sound("delivery", "shipping")) {
      return Optional.empty();
    }
    DeliveryPart delivery = new DeliveryPart(json.document(), problems);
    ShippingPart shipping = new ShippingPart(json.document(), scenario, problems);
    if (!delivery.isByCarrier()) {
      Shipping charges = shipping.fetched();
      return delivery.fetched().map(it -> new Carriage(it, charges));
    }
    return shipping
        .rate()
        .flatMap(
            rate ->
                shipping
                    .transit(rate)
                    .map(transit -> new Carriage(delivery.carried(transit), shipping.at(rate))));
  }
}
