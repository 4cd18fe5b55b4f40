package io.frostlot.files;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import java.util.List;
import java.util.Optional;

/** Puts a supplier together from the parts of its profile that were read; problems go their own way. */
record SupplierParts(JsonSchema.Checked json, PricesFile.Prices prices, Problems problems) {

  /** Empty where a part that is always needed is not there. */
  Optional<Supplier> supplier(String id, ScenarioFile scenario) {
    Json.Obj root = json.document();
    Promotions promotions = new Promotions(root, prices, problems);
    List<PriceBreak> breaks = promotions.breaks();
    List<Sale> sales = promotions.sales();
    List<OrderTerms.Discount> discounts = promotions.discounts();
    Boxing boxing = BoxingPart.read(root);
    if (!json.sound("delivery", "shipping") || !root.has("delivery")) {
      return Optional.empty();
    }
    ShippingPart shippingPart = new ShippingPart(root, problems);
    Optional<Json.Obj> rate = shippingPart.rate(scenario);
    Optional<Delivery> delivery = new DeliveryPart(root, problems).read(rate);
    Shipping shipping = shippingPart.read(rate);
    if (delivery.isEmpty() || !json.wrong().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Supplier(
            id,
            root.text("name"),
            new Supplier.PriceSheet(root.date("priceSheetDate"), prices.packs(), breaks, sales),
            TermsPart.read(root, discounts),
            boxing,
            shipping,
            delivery.get()));
  }
}
