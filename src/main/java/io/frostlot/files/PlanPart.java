package io.frostlot.files;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a plan in JSON into records, every name looked up in a world. */
final class PlanPart {
  private final World world;
  private final Problems problems;
  private final Map<String, Demand> demands;
  private final Map<String, Freezer> freezers = new HashMap<>();
  private final Map<String, Slot> slots = new HashMap<>();
  private final Map<String, Lot> lots = new HashMap<>();
  private boolean allOrdersRead;

  PlanPart(World world, Problems problems) {
    this.world = world;
    this.problems = problems;
    demands = world.demandsById();
    world.scenario().larder().freezers().forEach(freezer -> freezers.put(freezer.name(), freezer));
  }

  /** Incomplete where problems were added. */
  Plan read(Json.Obj root) {
    List<Order> orders = new ArrayList<>();
    PlanOrderPart reader = new PlanOrderPart(world, problems);
    for (Json.Obj json : root.objects("orders")) {
      reader
          .read(json)
          .ifPresent(
              order -> {
                orders.add(order);
                slots.put(key(json), order.slot());
              });
    }
    allOrdersRead = problems.isEmpty();
    root.objects("lots").forEach(this::lot);
    List<Feeding> feedings =
        root.objects("feedings").stream().flatMap(json -> feeding(json).stream()).toList();
    List<Discard> discards = root.objects("discards").stream().map(this::discard).toList();
    List<Lot> inOrder =
        root.objects("lots").stream()
            .filter(json -> lots.containsKey(json.text("id")))
            .map(json -> lots.get(json.text("id")))
            .toList();
    return new Plan(orders, inOrder, feedings, discards);
  }

  private static String key(Json.Obj json) {
    return json.text("supplier") + " " + json.text("orderBy");
  }

  private void lot(Json.Obj json) {
    Optional<Item> item = find(json, "item", world.items(), "an item of the scenario");
    find(json, "freezer", freezers, "a freezer of the scenario");
    Optional<Lot.Origin> origin = origin(json.object("origin"));
    if (json.date("arrivesLatest").isBefore(json.date("arrivesEarliest"))) {
      refuse(json.get("arrivesLatest"), "a day from arrivesEarliest on");
    }
    if (item.isEmpty() || origin.isEmpty()) {
      return;
    }
    Lot lot =
        new Lot(
            json.text("id"),
            item.get(),
            json.integer("pieces"),
            json.text("freezer"),
            json.date("arrivesEarliest"),
            json.date("arrivesLatest"),
            json.date("useBy"),
            origin.get(),
            move(json));
    if (lots.put(lot.id(), lot) != null) {
      refuse(json.get("id"), "an id that no other lot has");
    }
  }

  private Lot.Move move(Json.Obj json) {
    if (!json.has("moved")) {
      return Lot.Move.NEVER;
    }
    Json.Obj moved = json.object("moved");
    find(moved, "from", freezers, "a freezer of the scenario");
    return new Lot.Move(moved.text("from"), moved.date("day"));
  }

  private Optional<Lot.Origin> origin(Json.Obj json) {
    if (json.text("from").equals(PlanJsonPrey.ORDERED)) {
      if (!json.has("supplier") || !json.has("orderBy")) {
        refuse(json.get("from"), "supplier and orderBy beside it");
        return Optional.empty();
      }
      Optional<Slot> slot = Optional.ofNullable(slots.get(key(json)));
      if (slot.isEmpty() && allOrdersRead) {
        refuse(json.get("orderBy"), "an order of this plan with this supplier");
      }
      return slot.map(Lot.Ordered::new);
    }
    if (!json.has("lot")) {
      refuse(json.get("from"), "lot beside it");
      return Optional.empty();
    }
    return Optional.of(
        json.text("from").equals(PlanJsonPrey.IN_HAND)
            ? new Lot.InHand(json.text("lot"))
            : new Lot.UnderWay(json.text("lot")));
  }

  private Optional<Feeding> feeding(Json.Obj json) {
    Optional<Item> item = find(json, "item", world.items(), "an item of the scenario");
    find(json, "meal", demands, "a meal of the scenario");
    List<Feeding.Draw> draws =
        json.objects("draws").stream()
            .map(
                draw -> {
                  find(draw, "lot", lots, "a lot of this plan");
                  return new Feeding.Draw(draw.text("lot"), draw.integer("pieces"));
                })
            .toList();
    return item.map(
        it ->
            new Feeding(
                json.text("meal"),
                json.date("day"),
                new Option(it, json.integer("pieces")),
                json.integer("meals"),
                draws));
  }

  private Discard discard(Json.Obj json) {
    find(json, "lot", lots, "a lot of this plan");
    return new Discard(json.text("lot"), json.date("day"), json.integer("pieces"));
  }

  private <T> Optional<T> find(Json.Obj json, String field, Map<String, T> known, String expected) {
    Optional<T> found = Optional.ofNullable(known.get(json.text(field)));
    if (found.isEmpty()) {
      String hint = Nearest.hint(json.text(field), known.keySet());
      problems.add(new Problem(json.get(field).where(), json.get(field).shown(), expected, hint));
    }
    return found;
  }

  private void refuse(Json value, String expected) {
    problems.add(new Problem(value.where(), value.shown(), expected, ""));
  }
}
