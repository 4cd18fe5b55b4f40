package io.frostlot.files;

import io.frostlot.plan.Books;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Solved;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Reasons as JSON, described by {@code explain.schema.json}. */
public final class ExplainJson {
  private static final int DECIMALS = 3;
  private final Inputs inputs;
  private final DifferenceJson differences;

  public ExplainJson(Inputs inputs) {
    this.inputs = inputs;
    differences = new DifferenceJson(inputs.world().decimals());
  }

  /** The document, ended by a line feed. */
  public String text(List<ExplainFinding> findings) {
    return JsonLines.document(
        json -> {
          json.number("version", PlanJson.VERSION)
              .text("digest", inputs.digest())
              .text("currency", inputs.world().scenario().currency().getCurrencyCode());
          of(ExplainFinding.Tight.class, findings).stream()
              .reduce((first, last) -> last)
              .ifPresent(it -> tight(json, it));
          of(ExplainFinding.WhyNow.class, findings).forEach(it -> now(json, it));
          json.list(
              "rules",
              of(ExplainFinding.RuleCost.class, findings),
              (one, rule) -> {
                one.text("changed", rule.without());
                lacking(one, rule.lacking());
                rule.difference().forEach(it -> differences.write(one, "difference", it));
              });
          json.list("suppliers", of(ExplainFinding.WhySupplier.class, findings), this::supplier)
              .list("wishes", of(ExplainFinding.WishCost.class, findings), this::wish);
          of(ExplainFinding.FedWithout.class, findings).forEach(it -> fed(json, it));
        });
  }

  private static <T extends ExplainFinding> List<T> of(
      Class<T> type, List<ExplainFinding> findings) {
    return findings.stream().filter(type::isInstance).map(type::cast).toList();
  }

  private void tight(JsonLines json, ExplainFinding.Tight tight) {
    differences.answer(json, "plan", tight.plan());
    json.list(
        "tight",
        tight.tight(),
        (one, use) ->
            one.text("rule", use.rule())
                .text("where", use.where())
                .number("used", rounded(use.used()))
                .number("limit", rounded(use.limit())));
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private void now(JsonLines json, ExplainFinding.WhyNow now) {
    json.object(
        "nextOrder",
        one -> {
          one.text("supplier", now.slot().supplier()).day("orderBy", now.slot().ordered());
          differences.write(one, "onlyLater", now.difference());
        });
  }

  private void supplier(JsonLines json, ExplainFinding.WhySupplier why) {
    json.text("supplier", why.supplier()).text("item", why.item().id());
    differences.write(json, "notFromThere", why.difference());
    json.list(
        "instead",
        why.instead(),
        (one, row) ->
            one.text("supplier", row.supplier())
                .text("pack", row.packId())
                .number("packs", row.packs()));
  }

  private void wish(JsonLines json, ExplainFinding.WishCost wish) {
    json.text("wish", wish.wish().says()).yes("asked", wish.wish().asked());
    switch (wish.wish().sake()) {
      case ANIMAL -> json.text("sake", "animal");
      case PEOPLE -> json.text("sake", "people");
      case KEEPER -> {}
    }
    lacking(json, wish.lacking());
    json.object("with", one -> planned(one, wish.with()))
        .object("without", one -> planned(one, wish.without()));
    differences.write(json, "difference", wish.difference());
  }

  /** What the rule itself falls short of; it counts in no difference. */
  private static void lacking(JsonLines json, List<Shortfall> own) {
    if (!own.isEmpty()) {
      json.number("ownShortfall", own.stream().mapToLong(Shortfall::amount).sum());
    }
  }

  private void planned(JsonLines json, Solved solved) {
    differences.answer(json, "answer", solved);
    json.number("orders", solved.plan().orders().size())
        .text(
            "cash",
            solved
                .answer()
                .plan()
                .books()
                .total(Books.Account.CASH)
                .toText(inputs.world().decimals()));
  }

  private static void fed(JsonLines json, ExplainFinding.FedWithout fed) {
    json.object(
        "adequacy",
        one -> {
          PlanJsonAnimals.write(one, "with", fed.with());
          PlanJsonAnimals.write(one, "without", fed.without());
        });
  }

  /** What each rule that gives way costs, as a table; what is not known is left empty. */
  public static String wishes(List<ExplainFinding> findings) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(
                List.of("wish", "asked", "side", "orders", "cash", "cost", "bound", "shortfall")));
    for (ExplainFinding.WishCost wish : of(ExplainFinding.WishCost.class, findings)) {
      text.append(OrderSheets.line(side(wish, "with", wish.with())))
          .append(OrderSheets.line(side(wish, "without", wish.without())));
    }
    return text.toString();
  }

  private static List<String> side(ExplainFinding.WishCost wish, String side, Solved solved) {
    Books books = solved.answer().plan().books();
    return List.of(
        wish.wish().says(),
        Boolean.toString(wish.wish().asked()),
        side,
        Integer.toString(solved.plan().orders().size()),
        books.total(Books.Account.CASH).toString(),
        solved.standing().money().toString(),
        DifferenceJson.cell(solved.answer().bound(), RoundingMode.FLOOR),
        Long.toString(solved.standing().shortfall()));
  }

  /** What each rule costs, as a table. */
  public static String csv(List<ExplainFinding> findings) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(List.of("changed", "saves", "saves_at_least", "saves_at_most")));
    of(ExplainFinding.RuleCost.class, findings)
        .forEach(
            rule ->
                rule.difference().stream()
                    .filter(it -> it.sameMeals())
                    .forEach(
                        it ->
                            text.append(
                                OrderSheets.line(
                                    List.of(
                                        rule.without(),
                                        it.found().toString(),
                                        DifferenceJson.cell(it.saves().least(), RoundingMode.FLOOR),
                                        DifferenceJson.cell(
                                            it.saves().most(), RoundingMode.CEILING))))));
    return text.toString();
  }
}
