package io.frostlot.files;

import io.frostlot.supply.OrderTerms;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The fields {@code minimumOrder}, {@code freeShipping} and {@code tax} of a profile. */
final class TermsPart {
  private TermsPart() {}

  static OrderTerms read(Json.Obj root, List<OrderTerms.Discount> discounts) {
    OrderTerms.Threshold minimum =
        root.has("minimumOrder")
            ? threshold(root.object("minimumOrder"))
            : OrderTerms.Threshold.NONE;
    OrderTerms.Tax tax =
        root.has("tax")
            ? new OrderTerms.Tax(
                root.object("tax").percent("percent"), root.object("tax").yes("onCharges"))
            : OrderTerms.Tax.INCLUDED;
    List<OrderTerms.FreeShipping> free =
        root.objects("freeShipping").stream()
            .map(
                json ->
                    new OrderTerms.FreeShipping(
                        json.period("when"),
                        Promotions.follows(json),
                        threshold(json),
                        waives(json)))
            .toList();
    return new OrderTerms(discounts, minimum, free, tax);
  }

  private static OrderTerms.Threshold threshold(Json.Obj json) {
    return new OrderTerms.Threshold(json.money("from"), base(json.text("base")));
  }

  private static Set<OrderTerms.Charge> waives(Json.Obj json) {
    return json.texts("waives").stream()
        .map(name -> Typed.read(OrderTerms.Charge.class, name))
        .collect(Collectors.toSet());
  }

  static OrderTerms.Subtotal base(String name) {
    return Typed.read(OrderTerms.Subtotal.class, name);
  }
}
