package io.frostlot.files;

import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The fields {@code breaks}, {@code sales} and {@code orderDiscounts} of a profile. */
final class Promotions {
  private final Json.Obj root;
  private final PricesFile.Prices prices;
  private final Problems problems;
  private final Set<String> ids = new HashSet<>();

  Promotions(Json.Obj root, PricesFile.Prices prices, Problems problems) {
    this.root = root;
    this.prices = prices;
    this.problems = problems;
  }

  List<PriceBreak> breaks() {
    List<PriceBreak> breaks = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Json.Obj json : root.objects("breaks")) {
      String packId = json.text("item") + " x" + json.integer("packCount");
      if (!seen.add(packId)) {
        refuse(json, Problem.quote(packId) + " a second time", "each pack once");
      } else if (stepsInOrder(json, packId)) {
        breaks.add(
            new PriceBreak(
                packId,
                json.text("counting").equals("incremental")
                    ? PriceBreak.Counting.INCREMENTAL
                    : PriceBreak.Counting.ALL_UNITS,
                json.objects("steps").stream()
                    .map(s -> new PriceBreak.Step(s.integer("fromPacks"), s.money("price")))
                    .toList()));
      }
    }
    breaks.sort(Comparator.comparing(PriceBreak::packId));
    return breaks;
  }

  private boolean stepsInOrder(Json.Obj json, String packId) {
    int before = problems.count();
    if (prices.whole() && prices.pack(packId).isEmpty()) {
      refuse(json.get("item"), Problem.quote(packId), "an item and pack count of prices.csv");
    }
    int packs = 1;
    Money price =
        prices.pack(packId).map(Pack::price).orElse(new Money(java.math.BigDecimal.TEN.pow(9)));
    for (Json.Obj step : json.objects("steps")) {
      if (step.integer("fromPacks") <= packs) {
        refuse(
            step.get("fromPacks"),
            step.get("fromPacks").shown(),
            "more packs than in the step before");
      }
      if (step.money("price").compareTo(price) > 0) {
        refuse(
            step.get("price"), step.get("price").shown(), "not above the price before, " + price);
      }
      packs = step.integer("fromPacks");
      price = step.money("price");
    }
    return problems.count() == before;
  }

  List<Sale> sales() {
    List<Sale> sales = new ArrayList<>();
    for (Json.Obj json : root.objects("sales")) {
      requireNewId(json);
      requireItems(json);
      if (hasOneTerm(json)) {
        sales.add(
            new Sale(
                json.text("id"),
                json.period("when"),
                follows(json),
                Set.copyOf(json.texts("items")),
                terms(json),
                new Sale.Limits(limit(json, "mostPacksPerOrder"), limit(json, "mostPacksInTotal")),
                json.yes("combinable")));
      }
    }
    return sales;
  }

  private void requireNewId(Json.Obj json) {
    if (!ids.add(json.text("id"))) {
      refuse(json.get("id"), json.get("id").shown(), "an id that no other sale or discount has");
    }
  }

  private void requireItems(Json.Obj json) {
    for (Json item : json.items("items")) {
      if (prices.whole() && prices.item(((Json.Text) item).value()).isEmpty()) {
        refuse(item, item.shown(), "an item of prices.csv");
      }
    }
  }

  private boolean hasOneTerm(Json.Obj json) {
    List<String> terms = Stream.of("percentOff", "price", "take").filter(json::has).toList();
    if (terms.size() != 1) {
      refuse(
          json,
          terms.isEmpty() ? "no terms" : String.join(" and ", terms),
          "exactly one of percentOff, price, and take with pay");
      return false;
    }
    if (json.has("take") != json.has("pay")) {
      refuse(json, json.has("take") ? "take without pay" : "pay without take", "both or neither");
      return false;
    }
    if (json.has("take") && json.integer("pay") >= json.integer("take")) {
      refuse(json.get("pay"), json.get("pay").shown(), "less than take");
      return false;
    }
    return true;
  }

  private static Sale.Terms terms(Json.Obj json) {
    if (json.has("percentOff")) {
      return new Sale.PercentOff(json.percent("percentOff"));
    }
    return json.has("price")
        ? new Sale.PriceOf(json.money("price"))
        : new Sale.TakeAndPay(json.integer("take"), json.integer("pay"));
  }

  private static int limit(Json.Obj json, String field) {
    return json.has(field) ? json.integer(field) : Pack.UNLIMITED;
  }

  static DateBasis follows(Json.Obj json) {
    return Typed.read(DateBasis.class, json.text("follows"));
  }

  List<OrderTerms.Discount> discounts() {
    List<OrderTerms.Discount> discounts = new ArrayList<>();
    for (Json.Obj json : root.objects("orderDiscounts")) {
      requireNewId(json);
      List<OrderTerms.Tier> tiers = new ArrayList<>();
      for (Json.Obj tier : json.objects("tiers")) {
        Money from = tier.money("from");
        if (!tiers.isEmpty() && tiers.get(tiers.size() - 1).from().atLeast(from)) {
          refuse(tier.get("from"), tier.get("from").shown(), "more than in the tier before");
        }
        tiers.add(new OrderTerms.Tier(from, tier.percent("percentOff"), tier.money("amountOff")));
      }
      discounts.add(
          new OrderTerms.Discount(
              json.text("id"),
              json.period("when"),
              follows(json),
              TermsPart.base(json.text("base")),
              tiers,
              json.yes("combinable")));
    }
    discounts.sort(Comparator.comparing(OrderTerms.Discount::id));
    return discounts;
  }

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
