package io.frostlot.files;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.OtherPrey;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.SecondLook;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** An answer as JSON, described by {@code plan.schema.json}; read back by {@link PlanFile}. */
public final class PlanJson {
  static final int VERSION = 1;
  private static final int BOUND_DECIMALS = 4;
  private final Inputs inputs;
  private final int decimals;

  private PlanJson(Inputs inputs) {
    this.inputs = inputs;
    decimals = inputs.world().decimals();
  }

  /** The document, ended by a line feed. */
  public static String text(Inputs inputs, Answer answer) {
    return text(inputs, answer, List.of(), List.of());
  }

  /**
   * The same with what has changed and what was looked for besides.
   *
   * @param changes since an earlier plan, at most one
   * @param looks at most one of each kind
   */
  public static String text(
      Inputs inputs, Answer answer, List<Changes> changes, List<SecondLook> looks) {
    PlanJson plan = new PlanJson(inputs);
    return JsonLines.document(
        json -> {
          plan.write(json, answer);
          changes.forEach(some -> new PlanJsonChanges(plan.decimals).write(json, some));
          looks.forEach(look -> new PlanJsonLooks(inputs.world()).write(json, look));
        });
  }

  private void write(JsonLines json, Answer answer) {
    Scenario scenario = inputs.world().scenario();
    json.number("version", VERSION)
        .text("digest", inputs.digest())
        .text("scenario", scenario.name())
        .day("from", scenario.planning().from())
        .day("to", scenario.planning().to())
        .text("status", status(answer))
        .text("currency", scenario.currency().getCurrencyCode());
    if (answer instanceof Answer.WithPlan withPlan) {
      totals(json, withPlan);
      contents(json, withPlan.plan());
    } else {
      List.of("cost", "bound", "cash").forEach(json::nothing);
      List.of(
              "orders",
              "lots",
              "feedings",
              "discards",
              "unmetMeals",
              "gaveWay",
              "animals",
              "movedMeals",
              "leftovers",
              "freezers",
              "bill")
          .forEach(name -> json.texts(name, List.of()));
    }
    json.texts(
            "clash",
            answer instanceof Answer.Impossible impossible ? impossible.clash() : List.of())
        .texts("warnings", warnings(answer));
  }

  private List<String> warnings(Answer answer) {
    List<String> warnings = new ArrayList<>(inputs.warnings());
    if (answer instanceof Answer.WithPlan withPlan) {
      warnings.addAll(OtherPrey.sentences(inputs.world(), withPlan.plan().plan()));
    }
    return warnings;
  }

  private static String status(Answer answer) {
    if (answer instanceof Answer.WithPlan) {
      return answer instanceof Answer.Proven ? "proven" : "best-found";
    }
    return answer instanceof Answer.Impossible ? "impossible" : "none";
  }

  private void totals(JsonLines json, Answer.WithPlan answer) {
    Money cost = answer.plan().standing().money();
    json.text("cost", cost.toText(decimals));
    bound(answer, answer.bound())
        .ifPresentOrElse(
            bound -> json.text("bound", bound.toText(decimals)), () -> json.nothing("bound"));
    if (answer.bound().isEmpty()) {
      bound(answer, answer.boundOfAsGood())
          .ifPresent(bound -> json.text("boundOfAsGood", bound.toText(decimals)));
    }
    json.text("cash", answer.plan().books().total(Books.Account.CASH).toText(decimals));
  }

  /** Rounded down, so that it stays a bound; the noise of a bound above the cost is cut off. */
  private static Optional<Money> bound(Answer.WithPlan answer, OptionalDouble least) {
    Money cost = answer.plan().standing().money();
    return least.stream()
        .mapToObj(
            b -> new Money(BigDecimal.valueOf(b).setScale(BOUND_DECIMALS, RoundingMode.FLOOR)))
        .map(bound -> bound.atLeast(cost) ? cost : bound)
        .findFirst();
  }

  private void contents(JsonLines json, Answer.Judged judged) {
    Outcome outcome = Outcome.of(inputs.world(), judged.plan());
    new PlanJsonOrders(inputs.world(), judged.books()).write(json, judged.plan());
    PlanJsonPrey.write(json, judged.plan(), inputs.world());
    PlanJsonOutcome.write(json, outcome, decimals);
    PlanJsonOutcome.write(json, judged.books().shortfalls());
    PlanJsonAnimals.write(json, Fed.of(inputs.world(), judged.plan()));
    PlanJsonAnimals.write(json, inputs.world().scenario());
    bill(json, judged.books());
    if (!inputs.world().dueSoon().isNone()) {
      dueSoon(json, judged.plan());
    }
  }

  private void dueSoon(JsonLines json, Plan plan) {
    DueSoon dueSoon = inputs.world().dueSoon();
    List<DueSoon.Due> changed = dueSoon.changedBy(plan);
    json.list(
        "dueSoon",
        dueSoon.orders(),
        (one, due) ->
            one.text("supplier", due.slot().supplier())
                .day("orderBy", due.slot().ordered())
                .yes("kept", !changed.contains(due)));
  }

  private void bill(JsonLines json, Books books) {
    Map<Books.Account, Map<String, Money>> bill = new TreeMap<>();
    for (Books.Charge charge : books.charges()) {
      bill.computeIfAbsent(charge.account(), account -> new TreeMap<>())
          .merge(charge.rule(), charge.amount(), Money::plus);
    }
    List<Entry> entries =
        bill.entrySet().stream()
            .flatMap(
                account ->
                    account.getValue().entrySet().stream()
                        .map(rule -> new Entry(account.getKey(), rule.getKey(), rule.getValue())))
            .toList();
    json.list(
        "bill",
        entries,
        (one, entry) ->
            one.text("rule", entry.rule())
                .text("amount", entry.amount().toText(decimals))
                .text("kind", Typed.of(entry.account())));
  }

  private record Entry(Books.Account account, String rule, Money amount) {}
}
