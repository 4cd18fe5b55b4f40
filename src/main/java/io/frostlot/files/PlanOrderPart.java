package io.frostlot.files;

import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Turns one entry of {@code orders[]} into an order. */
final class PlanOrderPart {
  private final Map<String, Supplier> suppliers;
  private final Problems problems;

  PlanOrderPart(World world, Problems problems) {
    this.problems = problems;
    suppliers =
        world.scenario().suppliers().stream()
            .collect(Collectors.toMap(Supplier::id, Function.identity()));
  }

  /** Empty, with problems added, where it cannot be made. */
  Optional<Order> read(Json.Obj json) {
    int before = problems.count();
    Optional<Supplier> supplier = Optional.ofNullable(suppliers.get(json.text("supplier")));
    if (supplier.isEmpty()) {
      String hint = Nearest.hint(json.text("supplier"), suppliers.keySet());
      refuse(json.get("supplier"), "a supplier of the scenario", hint);
      return Optional.empty();
    }
    LocalDate ordered = json.date("orderBy");
    notBefore(json, "ships", ordered);
    notBefore(json, "arrivesEarliest", json.date("ships"));
    notBefore(json, "arrivesLatest", json.date("arrivesEarliest"));
    Map<String, Pack> packs =
        supplier.get().sheet().packs().stream()
            .collect(Collectors.toMap(Pack::id, Function.identity()));
    List<Order.Line> lines = lines(json, packs);
    List<List<Order.Content>> contents = contents(json, packs);
    if (problems.count() > before) {
      return Optional.empty();
    }
    Slot slot =
        new Slot(
            supplier.get().id(),
            ordered,
            json.date("ships"),
            json.date("arrivesEarliest"),
            json.date("arrivesLatest"));
    Order.Boxes boxes = new Order.Boxes(json.objects("boxes").size(), contents);
    return Optional.of(new Order(slot, lines, Set.copyOf(json.texts("promotions")), boxes));
  }

  private void notBefore(Json.Obj json, String field, LocalDate first) {
    if (json.date(field).isBefore(first)) {
      refuse(json.get(field), "a day from " + first + " on", "");
    }
  }

  private List<Order.Line> lines(Json.Obj json, Map<String, Pack> packs) {
    List<Order.Line> lines = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Json.Obj line : json.objects("packs")) {
      TreeMap<String, Integer> underSale = new TreeMap<>();
      line.objects("underSales")
          .forEach(sale -> underSale.merge(sale.text("sale"), sale.integer("packs"), Integer::sum));
      long onSale = underSale.values().stream().mapToLong(n -> n).sum();
      if (onSale > line.integer("packs")) {
        refuse(line.get("packs"), "at least the " + onSale + " packs under sales", "");
      } else if (!seen.add(PlanFile.packId(line))) {
        refuse(line.get("item"), "each pack of an order once", "");
      } else {
        pack(line, packs)
            .ifPresent(pack -> lines.add(new Order.Line(pack, line.integer("packs"), underSale)));
      }
    }
    return lines;
  }

  /** None where the supplier counts boxes by totals. */
  private List<List<Order.Content>> contents(Json.Obj json, Map<String, Pack> packs) {
    List<List<Order.Content>> boxes = new ArrayList<>();
    for (Json.Obj box : json.objects("boxes")) {
      if (!box.objects("contents").isEmpty()) {
        boxes.add(
            box.objects("contents").stream()
                .flatMap(
                    content ->
                        pack(content, packs)
                            .map(pack -> new Order.Content(pack, content.integer("packs")))
                            .stream())
                .toList());
      }
    }
    return boxes;
  }

  private Optional<Pack> pack(Json.Obj json, Map<String, Pack> packs) {
    Optional<Pack> pack = Optional.ofNullable(packs.get(PlanFile.packId(json)));
    if (pack.isEmpty()) {
      String found = Problem.quote(PlanFile.packId(json));
      String hint = Nearest.hint(PlanFile.packId(json), packs.keySet());
      problems.add(
          new Problem(
              json.get("item").where(), found, "a pack on the supplier's price sheet", hint));
    }
    return pack;
  }

  private void refuse(Json value, String expected, String hint) {
    problems.add(new Problem(value.where(), value.shown(), expected, hint));
  }
}
