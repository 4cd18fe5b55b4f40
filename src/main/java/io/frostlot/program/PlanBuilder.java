package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads a solution as a plan: orders, lots, feedings oldest first, and what must be thrown away. */
final class PlanBuilder {
  private final World world;
  private final Program program;
  private final double[] point;
  private final List<Lot> lots = new ArrayList<>();
  private final Map<String, Integer> left = new HashMap<>();
  private final Map<Flow, long[]> quota = new HashMap<>();

  PlanBuilder(World world, Program program, double[] point) {
    this.world = world;
    this.program = program;
    this.point = point;
  }

  Plan build() {
    List<Order> orders = orders();
    program.decisions().flows().forEach(flow -> flow.parts().forEach(part -> addLot(flow, part)));
    Discards discards = new Discards(world, program, lots);
    Plan fed = fed(orders, discards, new ArrayDeque<>());
    Plan plan = new Plan(orders, lots, fed.feedings(), discards.whenFull(fed));
    return discards.leaveTooMuch(plan) ? fed(orders, discards, discards.cutbacks(point)) : plan;
  }

  /** Every meal is served from what no cutback has taken before it. */
  private Plan fed(List<Order> orders, Discards discards, Deque<Discards.Cutback> cutbacks) {
    lots.forEach(lot -> left.put(lot.id(), lot.pieces()));
    for (Flow flow : program.decisions().flows()) {
      long[] bySegment = new long[flow.days().segments().length];
      for (int s = 0; s < bySegment.length; s++) {
        bySegment[s] = Math.round(flow.eaten(s).at(point));
      }
      quota.put(flow, bySegment);
    }
    List<Feeding> feedings = new ArrayList<>();
    List<Discard> discarded = new ArrayList<>();
    for (Serving serving : servings()) {
      while (!cutbacks.isEmpty() && !cutbacks.peek().day().isAfter(serving.day())) {
        discarded.addAll(discards.cut(cutbacks.remove(), left));
      }
      feedings.add(draw(serving));
    }
    cutbacks.forEach(cutback -> discarded.addAll(discards.cut(cutback, left)));
    return new Plan(orders, lots, feedings, discarded);
  }

  private List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      List<Order.Line> lines = new ArrayList<>();
      order.packs().values().forEach(pack -> {
        int packs = (int) Math.round(point[pack.count().index()]);
        if (packs > 0) {
          lines.add(new Order.Line(pack.pack(), packs, underSale(order, pack.pack())));
        }
      });
      if (!lines.isEmpty()) {
        orders.add(new Order(order.slot(), lines, taken(order, lines), boxes(order, lines)));
      }
    }
    return orders;
  }

  private static Order.Boxes boxes(OrderDecisions order, List<Order.Line> lines) {
    Boxing boxing = order.supplier().boxing();
    if (order.supplier().isPickUp()) {
      return Order.Boxes.NONE;
    }
    if (boxing.way() == Boxing.Way.BY_TOTAL) {
      return new Order.Boxes(BoxesByTotal.least(lines, boxing.limits()), List.of());
    }
    Map<Pack, Integer> counts = new HashMap<>();
    lines.forEach(line -> counts.put(line.pack(), line.packs()));
    List<List<Order.Content>> contents =
        BoxFit.pack(counts, boxing.limits()).stream()
            .map(box ->
                box.entrySet().stream()
                    .map(entry -> new Order.Content(entry.getKey(), entry.getValue()))
                    .toList())
            .toList();
    return new Order.Boxes(contents.size(), contents);
  }

  private SortedMap<String, Integer> underSale(OrderDecisions order, Pack pack) {
    SortedMap<String, Integer> counts = new TreeMap<>();
    order.underSale(pack).forEach((sale, count) -> {
      int packs = (int) Math.round(count.at(point));
      if (packs > 0) {
        counts.put(sale, packs);
      }
    });
    return counts;
  }

  /** Discounts taken, and sales under which something is bought. */
  private Set<String> taken(OrderDecisions order, List<Order.Line> lines) {
    Set<String> taken = new TreeSet<>();
    lines.forEach(line -> taken.addAll(line.underSale().keySet()));
    order.supplier().discountsOn(order.slot()).forEach(discount -> {
      Var chosen = order.promotions().get(discount.id());
      if (chosen != null && point[chosen.index()] > 0.5) {
        taken.add(discount.id());
      }
    });
    return taken;
  }

  private void addLot(Flow flow, Flow.Part part) {
    int pieces = (int) Math.round(part.pieces().at(point));
    if (pieces > 0) {
      Lot lot =
          new Lot(
              "lot " + (lots.size() + 1),
              flow.item(),
              pieces,
              flow.freezer().name(),
              Timeline.date(part.earliest()),
              Timeline.date(part.latest()),
              Timeline.date(part.useBy()),
              part.origin());
      lots.add(lot);
    }
  }

  private record Serving(Demand demand, DemandClass.Choice choice, int meals, LocalDate day) {}

  private List<Serving> servings() {
    List<Serving> servings = new ArrayList<>();
    for (Decisions.Served served : program.decisions().served()) {
      List<DemandClass.Choice> choices = served.demandClass().choices();
      long[] toGive = new long[choices.size()];
      for (int x = 0; x < toGive.length; x++) {
        toGive[x] = Math.round(point[served.byChoice().get(x).index()]);
      }
      int x = 0;
      for (Demand demand : served.demandClass().members()) {
        int open = demand.meal().count();
        while (open > 0 && x < toGive.length) {
          int meals = (int) Math.min(open, toGive[x]);
          if (meals > 0) {
            servings.add(new Serving(demand, choices.get(x), meals, day(demand, choices.get(x))));
          }
          open -= meals;
          toGive[x] -= meals;
          x += toGive[x] == 0 ? 1 : 0;
        }
      }
    }
    servings.sort(
        Comparator.comparing(Serving::day).thenComparing(s -> s.demand().meal().id()));
    return servings;
  }

  /** The least late day of the meal within the choice's segment. */
  private LocalDate day(Demand demand, DemandClass.Choice choice) {
    ItemDays days = program.decisions().timeline().of(choice.option().item());
    Meal.Days window = demand.meal().days();
    int from = Math.max(days.segments()[choice.segment()], Timeline.day(window.earliest()));
    int to = Math.min(days.segmentEnd(choice.segment()), Timeline.day(window.latest()));
    int best = Timeline.day(window.best());
    return Timeline.date(Math.max(from, Math.min(to, best)));
  }

  /** Takes the pieces that go past their use-by first. */
  private Feeding draw(Serving serving) {
    int need = serving.meals() * serving.choice().option().pieces();
    List<Feeding.Draw> draws = new ArrayList<>();
    List<Lot> usable =
        lots.stream()
            .filter(lot -> lot.item().equals(serving.choice().option().item()))
            .filter(lot -> !lot.latest().isAfter(serving.day()) && !lot.useBy().isBefore(serving.day()))
            .sorted(Comparator.comparing(Lot::useBy).thenComparing(Lot::id))
            .toList();
    for (Lot lot : usable) {
      long[] open = quota.get(flow(lot));
      int take =
          (int) Math.min(Math.min(need, left.get(lot.id())), open[serving.choice().segment()]);
      if (take > 0) {
        draws.add(new Feeding.Draw(lot.id(), take));
        left.merge(lot.id(), -take, Integer::sum);
        open[serving.choice().segment()] -= program.decisions().flowsOf(lot.item()).size() > 1 ? take : 0;
        need -= take;
      }
    }
    return new Feeding(
        serving.demand().meal().id(), serving.day(), serving.choice().option(), serving.meals(), draws);
  }

  private Flow flow(Lot lot) {
    return program.decisions().flowsOf(lot.item()).stream()
        .filter(flow -> flow.freezer().name().equals(lot.freezer()))
        .findFirst()
        .orElseThrow();
  }
}
