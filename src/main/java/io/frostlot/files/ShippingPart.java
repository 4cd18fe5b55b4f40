package io.frostlot.files;

import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The fields {@code shipping}, {@code packing}, {@code surcharges}, {@code orderCharges} of a profile. */
final class ShippingPart {
  private final Json.Obj root;
  private final Problems problems;

  ShippingPart(Json.Obj root, Problems problems) {
    this.root = root;
    this.problems = problems;
  }

  /** The rate to the keeper's place; empty for a pick-up, or with a problem added. */
  Optional<Json.Obj> rate(ScenarioFile scenario) {
    if (!root.object("delivery").text("by").equals("carrier")) {
      Stream.of("boxing", "shipping", "packing", "surcharges")
          .filter(root::has)
          .filter(name -> !(root.get(name) instanceof Json.Arr list) || !list.items().isEmpty())
          .forEach(name -> refuse(root.get(name), "a field " + Problem.quote(name), "none, because it is fetched"));
      return Optional.empty();
    }
    if (!root.has("shipping")) {
      refuse(root, "no field \"shipping\"", "one, because it comes by carrier");
      return Optional.empty();
    }
    Json.Obj shipping = root.object("shipping");
    boolean zoned = shipping.has("zones") && shipping.has("places");
    if (shipping.has("toMe") == zoned || shipping.has("zones") != shipping.has("places")) {
      refuse(shipping, String.join(" and ", shipping.fields().keySet()), "either toMe, or places with zones");
      return Optional.empty();
    }
    Optional<Json.Obj> rate =
        zoned
            ? new Zones(shipping, problems).rateTo(scenario)
            : Optional.of(shipping.object("toMe"));
    return rate;
  }

  Shipping read(Optional<Json.Obj> rate) {
    return new Shipping(
        rate.map(ShippingPart::rate).orElse(Shipping.Rate.FREE),
        root.has("packing") ? packing(root.object("packing")) : Shipping.Packing.FREE,
        root.objects("surcharges").stream().map(ShippingPart::surcharge).toList(),
        root.objects("orderCharges").stream().map(ShippingPart::orderCharge).toList());
  }

  private static Shipping.Rate rate(Json.Obj json) {
    Money first = json.money("firstBox");
    return new Shipping.Rate(
        json.money("perOrder"), first, json.has("nextBox") ? json.money("nextBox") : first);
  }

  private static Shipping.Packing packing(Json.Obj json) {
    return new Shipping.Packing(json.money("perOrder"), json.money("perBox"));
  }

  private static Shipping.Surcharge surcharge(Json.Obj json) {
    return new Shipping.Surcharge(
        json.period("shipDates"), json.money("perOrder"), json.money("perBox"));
  }

  private static Shipping.OrderCharge orderCharge(Json.Obj json) {
    return new Shipping.OrderCharge(json.period("orderDates"), json.money("amount"));
  }

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found.isEmpty() ? "neither" : found, expected, ""));
  }
}
