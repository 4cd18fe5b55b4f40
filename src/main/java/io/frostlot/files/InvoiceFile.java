package io.frostlot.files;

import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Keeper;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the invoice of a joint order of a group; described by {@code invoice.schema.json}. */
public final class InvoiceFile {
  private final Group group;
  private final Problems problems = new Problems();
  private final Map<String, Pack> packs = new LinkedHashMap<>();
  private final Map<String, Invoice.Line> lines = new LinkedHashMap<>();

  private InvoiceFile(Group group) {
    this.group = group;
  }

  /** Whatever the bytes, an invoice or a list of problems. */
  public static InvoiceReading read(Group group, Path path) {
    return new InvoiceFile(group).read(path);
  }

  private InvoiceReading read(Path path) {
    String name = String.valueOf(path.getFileName());
    Optional<Json.Obj> json =
        TextFile.read(path, name, problems)
            .flatMap(text -> JsonText.parse(text, name, problems))
            .flatMap(it -> JsonSchema.named("schema/invoice.schema.json").check(it, problems))
            .map(JsonSchema.Checked::document);
    if (json.isEmpty() || !problems.isEmpty()) {
      return new InvoiceReading.Refused(problems.all());
    }
    Invoice invoice = invoice(json.get());
    return problems.isEmpty()
        ? new InvoiceReading.Accepted(invoice)
        : new InvoiceReading.Refused(problems.all());
  }

  /** Incomplete where problems were added. */
  private Invoice invoice(Json.Obj json) {
    member(json.get("host"));
    Json id = json.get("supplier");
    List<Supplier> sellers =
        Stream.of(true, false)
            .flatMap(first -> keepers(json.text("host"), first))
            .flatMap(keeper -> keeper.scenario().suppliers().stream())
            .filter(supplier -> supplier.id().equals(json.text("supplier")))
            .toList();
    if (sellers.isEmpty()) {
      unknown(id);
    }
    sellers.forEach(it -> it.sheet().packs().forEach(pack -> packs.putIfAbsent(pack.id(), pack)));
    Money sum = Money.ZERO;
    for (Json.Obj line : json.objects("lines")) {
      sum = sum.plus(sellers.isEmpty() ? Money.ZERO : line(line));
    }
    for (Json.Obj charge : json.objects("charges")) {
      sum = sum.plus(charge.money("amount"));
    }
    total(json, sum);
    Invoice.Head head =
        new Invoice.Head(
            json.text("supplier"), json.date("ordered"), json.text("host"), json.money("total"));
    InvoiceParts parts = new InvoiceParts(group, lines, problems);
    List<Invoice.Portion> portions = sellers.isEmpty() ? List.of() : parts.portions(json);
    json.objects("lost").forEach(some -> isWhole(some, "refund"));
    List<Invoice.Mishap> mishaps = problems.isEmpty() ? parts.mishaps(json, portions) : List.of();
    return new Invoice(
        head, List.copyOf(lines.values()), portions, mishaps, agreed(json), evened(json));
  }

  /** The host, by whose prey a joint order is reckoned, or the others. */
  private Stream<Keeper> keepers(String host, boolean first) {
    return group.keepers().stream().filter(keeper -> keeper.name().equals(host) == first);
  }

  /** What the invoice asks for a row. */
  private Money line(Json.Obj json) {
    String id = PlanFile.packId(json);
    Optional<Pack> pack = Optional.ofNullable(packs.get(id));
    if (pack.isEmpty()) {
      String hint = Nearest.hint(id, packs.keySet());
      Where where = json.get("item").where();
      problems.add(
          new Problem(where, Problem.quote(id), "a pack on the supplier's price sheet", hint));
      return Money.ZERO;
    }
    Money price = json.has("packPrice") ? json.money("packPrice") : pack.get().price();
    int count = json.integer("packs");
    if (lines.put(id, new Invoice.Line(pack.get(), count, price)) != null) {
      refuse(json.get("item"), "each pack of an item once");
    }
    return json.has("amount") ? json.money("amount") : price.times(count);
  }

  private void total(Json.Obj json, Money sum) {
    Money total = json.money("total");
    if (isWhole(json, "total") && problems.isEmpty() && !sum.equals(total)) {
      Json typed = json.get("total");
      problems.add(
          new Problem(
              typed.where(),
              typed.shown(),
              sum.toText(decimals()) + ", the sum of rows and charges",
              "A row that a break or a sale makes cheaper has its own amount."));
    }
  }

  private Map<String, Money> agreed(Json.Obj json) {
    Map<String, Money> agreed = amounts(json, "agreed", "shared");
    if (agreed.isEmpty() && group.terms().needsPlan()) {
      problems.add(
          new Problem(
              json.where(),
              "no agreed shares",
              "agreed, with the way " + group.terms().way(),
              "share --invoices writes them."));
    }
    return agreed;
  }

  private Map<String, Money> evened(Json.Obj json) {
    Map<String, Money> evened = amounts(json, "evened", "more");
    Money sum = evened.values().stream().reduce(Money.ZERO, Money::plus);
    if (!sum.isZero()) {
      problems.add(
          new Problem(
              json.get("evened").where(),
              "amounts that come to " + sum.toText(decimals()),
              "amounts that come to 0",
              "What some pay more, others pay less."));
    }
    return evened;
  }

  /** By member, each once. */
  private Map<String, Money> amounts(Json.Obj json, String list, String field) {
    Map<String, Money> amounts = new HashMap<>();
    for (Json.Obj some : json.objects(list)) {
      member(some.get("member"));
      isWhole(some, field);
      if (amounts.put(some.text("member"), some.money(field)) != null) {
        refuse(some.get("member"), "each member once");
      }
    }
    return amounts;
  }

  /** Amounts are settled to the minor unit; says so where one is not. */
  private boolean isWhole(Json.Obj json, String field) {
    boolean whole = json.money(field).rounded(decimals()).equals(json.money(field));
    if (!whole) {
      refuse(json.get(field), "an amount of whole minor units");
    }
    return whole;
  }

  private int decimals() {
    return Math.max(0, group.first().currency().getDefaultFractionDigits());
  }

  private void unknown(Json supplier) {
    List<String> known =
        group.keepers().stream()
            .flatMap(keeper -> keeper.scenario().suppliers().stream())
            .map(Supplier::id)
            .distinct()
            .sorted()
            .toList();
    problems.add(
        new Problem(
            supplier.where(),
            supplier.shown(),
            "a supplier of a member's scenario: " + String.join(", ", known),
            Nearest.hint(((Json.Text) supplier).value(), known)));
  }

  private void member(Json name) {
    if (!group.names().contains(((Json.Text) name).value())) {
      refuse(name, "one of the members " + String.join(", ", group.names()));
    }
  }

  private void refuse(Json value, String expected) {
    problems.add(new Problem(value.where(), value.shown(), expected, ""));
  }
}
