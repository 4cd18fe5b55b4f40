package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
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
 * <tr><td>put(part, f)</td><td>pieces of an arrival put into freezer f, and moved from there (see {@link Stowing})</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>stock(i, f, k), thrown(i, f, k)</td><td>see {@link Flow}</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>served(c, x)</td><td>meals of class c served by choice x</td><td>meals</td><td>whole, 0 .. count</td></tr>
 * <tr><td>drawn(i, f, s)</td><td>pieces of item i eaten from freezer f in segment s</td><td>pieces</td><td>&gt;= 0</td></tr>
 * <tr><td>missed(c)</td><td>meals of class c unmet, or bought in the tail</td><td>meals</td><td>whole, 0 .. count</td></tr>
 * </table>
 */
final class Decisions {
  private static final double HARDLY = 1e-4;
  private final World world;
  private final List<Tying> tying;
  private final Timeline timeline;
  private final SortedMap<Slot, OrderDecisions> orders = new TreeMap<>();
  private final Map<String, List<Flow>> flows;
  private final List<DemandClass> classes;
  private final List<Served> served = new ArrayList<>();

  /**
   * The service of one class.
   *
   * @param byChoice one variable per choice of the class
   * @param missed unmet, or bought in the tail
   */
  record Served(DemandClass demandClass, List<Var> byChoice, Var missed) {
    /** The sum over its choices of a weight times the meals that they serve. */
    Linear weighed(ToDoubleFunction<DemandClass.Choice> weight) {
      Linear sum = new Linear();
      for (int x = 0; x < byChoice.size(); x++) {
        sum.plus(weight.applyAsDouble(demandClass.choices().get(x)), byChoice.get(x));
      }
      return sum;
    }
  }

  /**
   * Of a program under construction.
   *
   * @param tying its rules that tie the meals of one animal together
   */
  Decisions(World world, Model model, Formulation formulation, List<Tying> tying) {
    this.world = world;
    this.tying = List.copyOf(tying);
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
    flows = new Stowing(world, timeline, model).stow(orders.values());
    Presence presence = new Presence(timeline, this::flowsOf);
    classes =
        formulation.classes(timeline, presence, new MealTies(world, tying, formulation.apart()));
    serve(timeline.isExact() && imposesAllTies(), model);
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

  /** Deliveries that are ordered from at a point, wholly or in part. */
  List<Slot> ordered(double[] point) {
    return orders.values().stream()
        .filter(order -> point[order.open().index()] > HARDLY)
        .map(OrderDecisions::slot)
        .toList();
  }

  /** Packs of each row at a point, by delivery. */
  Map<Slot, Map<Pack, Integer>> packs(double[] point) {
    Map<Slot, Map<Pack, Integer>> packs = new HashMap<>();
    orders.forEach((slot, order) -> packs.put(slot, order.packs(point)));
    return packs;
  }

  List<Served> served() {
    return served;
  }

  /** The service of each meal, by its id. */
  Map<String, Served> servedByMeal() {
    Map<String, Served> byMeal = new HashMap<>();
    for (Served some : served) {
      some.demandClass().members().forEach(demand -> byMeal.put(demand.meal().id(), some));
    }
    return byMeal;
  }

  /** Rules that tie the meals of one animal together. */
  List<Tying> tying() {
    return tying;
  }

  /** Is all that these rules ask put to the solver? */
  boolean imposesAllTies() {
    return tying.stream().noneMatch(Tying::isRelaxed);
  }

  /** Flows of an item in a keeper's freezers. */
  List<Flow> flowsOf(String keeper, Item item) {
    return flows.getOrDefault(item.id(), List.of()).stream()
        .filter(flow -> world.joint().feeds(flow.freezer(), keeper))
        .toList();
  }

  /** All flows, by item. */
  List<Flow> flows() {
    return flows.values().stream().flatMap(List::stream).toList();
  }
}
