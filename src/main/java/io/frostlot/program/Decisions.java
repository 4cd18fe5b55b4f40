package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToIntBiFunction;

/**
 * The variables that rules share.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>unit</th><th>bounds</th></tr>
 * <tr><td>open(o)</td><td>order o is placed</td><td>-</td><td>0, 1</td></tr>
 * <tr><td>count(o, p)</td><td>packs of row p in order o</td><td>packs</td><td>whole, 0 .. useful</td></tr>
 * <tr><td>atStep(o, p, l)</td><td>of these at price step l</td><td>packs</td><td>whole</td></tr>
 * <tr><td>boxes(o)</td><td>boxes charged for</td><td>boxes</td><td>whole, 0 .. most</td></tr>
 * <tr><td>put(part, f)</td><td>pieces of an arrival put into freezer f</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>stock(i, f, k), thrown(i, f, k)</td><td>see {@link Flow}</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>served(c, x)</td><td>meals of class c served by choice x</td><td>meals</td><td>whole, 0 .. count</td></tr>
 * <tr><td>drawn(i, f, s)</td><td>pieces of item i eaten from freezer f in segment s</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>missed(c)</td><td>meals of class c unmet, or bought in the tail</td><td>meals</td><td>whole, 0 .. count</td></tr>
 * </table>
 */
final class Decisions {
  private final World world;
  private final Timeline timeline;
  private final SortedMap<Slot, OrderDecisions> orders = new TreeMap<>();
  private final Map<String, List<Flow>> flows = new LinkedHashMap<>();
  private final List<DemandClass> classes;
  private final List<Served> served = new ArrayList<>();

  /**
   * The service of one class.
   *
   * @param byChoice one variable per choice of the class
   * @param missed unmet, or bought in the tail
   */
  record Served(DemandClass demandClass, List<Var> byChoice, Var missed) {}

  Decisions(World world, Model model, Formulation formulation) {
    this.world = world;
    timeline = new Timeline(world, formulation.grain());
    ToIntBiFunction<Slot, Pack> mostPacks = formulation.mostPacks(world);
    for (Slot slot : world.slots()) {
      Supplier supplier = world.supplier(slot.supplier());
      OrderDecisions order = new OrderDecisions(slot, supplier, model);
      for (Pack pack : supplier.sheet().packs()) {
        int most = mostPacks.applyAsInt(slot, pack);
        if (most > 0) {
          order.add(pack, most, model);
        }
      }
      if (!order.packs().isEmpty()) {
        orders.put(slot, order);
      }
    }
    createFlows(model);
    classes = formulation.classes(world, timeline, new Presence(timeline, this::flowsOf));
    serve(timeline.isExact() && !Adequacy.isRelaxed(world), model);
  }

  private void createFlows(Model model) {
    List<Freezer> inUse =
        world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
    for (StockLot lot : world.scenario().larder().stock()) {
      Flow.Part part =
          new Flow.Part(
              timeline.first(),
              timeline.first(),
              timeline.first(),
              timeline.lastUsable(lot.item(), lot.useBy()),
              new Lot.InHand(lot.id()),
              Linear.constant(lot.pieces()));
      add(part, lot.item(), world.freezer(lot.freezer()), model);
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      Joint.Coming coming = new Joint.Coming(lot.arrivesEarliest(), lot.arrivesLatest());
      List<Place> places =
          inUse.stream()
              .filter(freezer -> world.joint().isOwn(lot.id(), freezer))
              .map(freezer -> new Place(freezer, coming))
              .toList();
      Arrival arrival = new Arrival(lot.item(), lot.arrivesEarliest(), new Lot.UnderWay(lot.id()));
      put(arrival, Linear.constant(lot.pieces()), places, model);
    }
    for (OrderDecisions order : orders.values()) {
      Slot slot = order.slot();
      List<Place> places =
          inUse.stream()
              .flatMap(
                  freezer ->
                      world.joint().comings(slot, freezer).stream()
                          .map(coming -> new Place(freezer, coming)))
              .toList();
      order.packs().keySet().stream()
          .flatMap(Pack::items)
          .distinct()
          .forEach(
              item ->
                  put(
                      new Arrival(item, slot.arrivesEarliest(), new Lot.Ordered(slot)),
                      order.pieces(item),
                      places,
                      model));
    }
  }

  /** What comes, and the day from which its life counts. */
  private record Arrival(Item item, LocalDate fresh, Lot.Origin origin) {}

  /** A freezer, and when something comes into it. */
  private record Place(Freezer freezer, Joint.Coming coming) {}

  /** Splits what arrives over the places that it may come to. */
  private void put(Arrival arrival, Linear pieces, List<Place> places, Model model) {
    Linear left = pieces.copy();
    for (Place place : places) {
      Linear share = pieces;
      if (places.size() > 1) {
        Var put = model.follows(0, model.most(pieces));
        share = Linear.of(put);
        left.plus(-1, put);
      }
      Flow.Part part =
          new Flow.Part(
              Timeline.day(place.coming().earliest()),
              timeline.at(place.coming().earliest()),
              timeline.at(place.coming().latest()),
              timeline.lastUsable(
                  arrival.item(), place.freezer().useBy(arrival.item(), arrival.fresh())),
              arrival.origin(),
              share);
      add(part, arrival.item(), place.freezer(), model);
    }
    if (places.size() > 1) {
      model.equal(EveryPiece.ID, left, 0);
    }
  }

  /** Adds pieces to a flow of the item in the freezer whose order they keep, or to a new one. */
  private void add(Flow.Part part, Item item, Freezer freezer, Model model) {
    List<Flow> ofItem = flows.computeIfAbsent(item.id(), k -> new ArrayList<>());
    Flow flow =
        ofItem.stream()
            .filter(other -> other.freezer().equals(freezer) && other.keepsOrder(part))
            .findFirst()
            .orElseGet(() -> new Flow(item, freezer, timeline, model));
    if (!ofItem.contains(flow)) {
      ofItem.add(flow);
    }
    flow.add(part, model);
  }

  /** Those who eat an item from the same freezers. */
  private record Table(String keeper, Item item) {}

  /** Meals that are tied do not follow from packs: they are {@code whole} by themselves. */
  private void serve(boolean whole, Model model) {
    Map<Table, Linear[]> eaten = new LinkedHashMap<>();
    for (DemandClass c : classes) {
      List<Var> byChoice = new ArrayList<>();
      for (DemandClass.Choice choice : c.choices()) {
        Var meals = whole && c.isTied() ? model.whole(0, c.count()) : model.follows(0, c.count());
        byChoice.add(meals);
        Item item = choice.option().item();
        Linear[] bySegment =
            eaten.computeIfAbsent(
                new Table(c.keeper(), item), i -> new Linear[timeline.of(item).segments().length]);
        if (bySegment[choice.segment()] == null) {
          bySegment[choice.segment()] = new Linear();
        }
        bySegment[choice.segment()].plus(choice.option().pieces(), meals);
      }
      served.add(new Served(c, List.copyOf(byChoice), model.follows(0, c.count())));
    }
    eaten.forEach((table, bySegment) -> draw(table, bySegment, model));
  }

  /** What the meals of an item take is taken from its freezers. */
  private void draw(Table table, Linear[] bySegment, Model model) {
    List<Flow> from = flowsOf(table.keeper(), table.item());
    for (int s = 0; s < bySegment.length; s++) {
      if (bySegment[s] == null) {
        continue;
      }
      Linear left = bySegment[s].copy();
      for (Flow flow : from) {
        if (from.size() == 1) {
          flow.eaten(s).plus(bySegment[s]);
        } else {
          Var drawn = model.follows(0, model.most(bySegment[s]));
          flow.eaten(s).plus(1, drawn);
          left.plus(-1, drawn);
        }
      }
      if (from.size() > 1) {
        model.equal(EveryPiece.ID, left, 0);
      }
    }
  }

  World world() {
    return world;
  }

  Timeline timeline() {
    return timeline;
  }

  SortedMap<Slot, OrderDecisions> orders() {
    return orders;
  }

  List<Served> served() {
    return served;
  }

  /** Flows of an item in a keeper's freezers. */
  List<Flow> flowsOf(String keeper, Item item) {
    return flows.getOrDefault(item.id(), List.of()).stream()
        .filter(flow -> world.joint().keeperOf(flow.freezer()).equals(keeper))
        .toList();
  }

  /** All flows, by item. */
  List<Flow> flows() {
    return flows.values().stream().flatMap(List::stream).toList();
  }
}
