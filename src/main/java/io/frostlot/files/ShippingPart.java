package io.frostlot.files;

import io.frostlot.supply.Delivery;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;

/**
 * The fields {@code shipping}, {@code packing}, {@code surcharges}, {@code orderCharges} of a
 * profile.
 */
final class ShippingPart {
  private static final List<String> OF_CARRIERS =
      List.of("boxing", "shipping", "packing", "surcharges");
  private final Json.Obj root;
  private final ScenarioFile scenario;
  private final Problems problems;

  ShippingPart(Json.Obj root, ScenarioFile scenario, Problems problems) {
    this.root = root;
    this.scenario = scenario;
    this.problems = problems;
  }

  /** What it costs to be fetched. */
  Shipping fetched() {
    OF_CARRIERS.stream()
        .filter(root::has)
        .filter(name -> !(root.get(name) instanceof Json.Arr list) || !list.items().isEmpty())
        .forEach(
            name ->
                refuse(
                    root.get(name),
                    "a field " + Problem.quote(name),
                    "none, because it is fetched"));
    return shipping(Shipping.Rate.FREE);
  }

  Shipping at(Json.Obj rate) {
    return shipping(rate(rate));
  }

  /** The rate to the keeper's place; empty with a problem added. */
  Optional<Json.Obj> rate() {
    if (!root.has("shipping")) {
      refuse(root, "no field \"shipping\"", "one, because it comes by carrier");
      return Optional.empty();
    }
    Json.Obj shipping = root.object("shipping");
    boolean zoned = shipping.has("zones") && shipping.has("places");
    if (shipping.has("toMe") == zoned || shipping.has("zones") != shipping.has("places")) {
      String found = String.join(" and ", shipping.fields().keySet());
      refuse(shipping, found.isEmpty() ? "neither" : found, "either toMe, or places with zones");
      return Optional.empty();
    }
    return zoned
        ? new Zones(shipping, problems).rateTo(scenario)
        : Optional.of(shipping.object("toMe"));
  }

  /** Days from ship to arrival; empty with a problem added. */
  Optional<Delivery.Transit> transit(Json.Obj rate) {
    int earliest = rate.integer("transitEarliestDays");
    int latest = rate.has("transitLatestDays") ? rate.integer("transitLatestDays") : earliest;
    if (latest < earliest) {
      Json typed = rate.get("transitLatestDays");
      refuse(typed, typed.shown(), "at least transitEarliestDays, " + earliest);
      return Optional.empty();
    }
    return Optional.of(new Delivery.Transit(earliest, latest));
  }

  private Shipping shipping(Shipping.Rate rate) {
    return new Shipping(
        rate,
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
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
