package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A program of unmerged meals held to a plan: rows that give every decision the plan's value. What
 * only follows from the rules (price steps, what falls short) stays free.
 */
final class Pins {
  private final Program program;
  private final Plan plan;
  private final Map<String, Lot> lots;
  private final List<Model.Row> rows = new ArrayList<>();
  private final Set<Lot> pinned = new HashSet<>();
  private boolean said = true;
  private boolean possible = true;

  private Pins(Program program, Plan plan) {
    this.program = program;
    this.plan = plan;
    lots = plan.lots().stream().collect(Collectors.toMap(Lot::id, lot -> lot));
    Map<Slot, Order> orders =
        plan.orders().stream().collect(Collectors.toMap(Order::slot, order -> order));
    program.decisions().orders().values().forEach(order -> pin(order, orders.remove(order.slot())));
    said &= orders.isEmpty();
    program.decisions().flows().forEach(this::pin);
    possible &= pinned.containsAll(plan.lots());
    pinMeals();
  }

  static Pins of(Program program, Plan plan) {
    return new Pins(program, plan);
  }

  List<Model.Row> rows() {
    return rows;
  }

  /** Can the program say this plan at all, right or wrong? */
  boolean isSaid() {
    return said;
  }

  /** Is there a decision for everything that the plan does? */
  boolean isPossible() {
    return possible;
  }

  private void pin(Linear amount, double value) {
    rows.add(Model.extra(value, amount, value));
  }

  private void pin(OrderDecisions decisions, Order order) {
    Map<Pack, Integer> packs = order == null ? Map.of() : order.packs();
    said &= decisions.packs().keySet().containsAll(packs.keySet());
    pin(Linear.of(decisions.open()), order == null ? 0 : 1);
    pin(Linear.of(decisions.boxes()), order == null ? 0 : order.boxes().count());
    decisions.packs().forEach((pack, d) -> pin(Linear.of(d.count()), packs.getOrDefault(pack, 0)));
    for (Pack pack : decisions.packs().keySet()) {
      decisions
          .underSale(pack)
          .forEach((sale, count) -> pin(count, order == null ? 0 : under(order, pack, sale)));
    }
    Set<String> promotions = order == null ? Set.of() : order.promotions();
    possible &= hold(decisions).containsAll(promotions);
    decisions
        .promotions()
        .forEach((id, taken) -> pin(Linear.of(taken), promotions.contains(id) ? 1 : 0));
  }

  /** Promotions that hold for an order. */
  private static Set<String> hold(OrderDecisions order) {
    Set<String> ids = new HashSet<>();
    order.supplier().discountsOn(order.slot()).forEach(discount -> ids.add(discount.id()));
    order.supplier().salesOn(order.slot()).forEach(sale -> ids.add(sale.id()));
    return ids;
  }

  private static int under(Order order, Pack pack, String sale) {
    return order.lines().stream()
        .filter(line -> line.pack().equals(pack))
        .mapToInt(line -> line.underSale().getOrDefault(sale, 0))
        .sum();
  }

  private static boolean isOf(Lot lot, Flow.Part part) {
    return lot.origin().equals(part.origin())
        && (part.inHand()
            || (Timeline.day(lot.earliest()) == part.earliest()
                && Timeline.day(lot.latest()) == part.latest()))
        && Timeline.day(lot.useBy()) == part.useBy();
  }

  private void pin(Flow flow) {
    List<Lot> own = new ArrayList<>();
    for (Flow.Part part : flow.parts()) {
      List<Lot> here =
          plan.lots().stream()
              .filter(lot -> lot.item().equals(flow.item()))
              .filter(lot -> lot.freezer().equals(flow.freezer().name()))
              .filter(lot -> isOf(lot, part))
              .toList();
      pin(part.pieces(), here.stream().mapToInt(Lot::pieces).sum());
      own.addAll(here);
    }
    pinned.addAll(own);
    pinStock(flow, own);
    pinEaten(flow, own);
  }

  private void pinStock(Flow flow, List<Lot> own) {
    Levels levels = new Levels(plan);
    for (int k = 0; k < flow.intervals(); k++) {
      int first = flow.days().intervals()[k];
      int present = 0;
      for (Lot lot : own) {
        boolean here = Timeline.day(lot.latest()) <= first && Timeline.day(lot.useBy()) >= first;
        present += here ? levels.beforeMeals(lot, Timeline.date(first)) : 0;
      }
      pin(Linear.of(flow.stock(k)).plus(flow.thrown(k)), present);
      if (flow.days().intervalEnd(k) > first && !flow.thrown(k).hasNoTerms()) {
        pin(flow.thrown(k), thrownOn(own, first + 1));
      }
    }
  }

  private int thrownOn(List<Lot> own, int day) {
    return plan.discards().stream()
        .filter(discard -> own.contains(lots.get(discard.lotId())))
        .filter(discard -> Timeline.day(discard.day()) == day)
        .mapToInt(Discard::pieces)
        .sum();
  }

  private void pinEaten(Flow flow, List<Lot> own) {
    Map<Integer, Integer> eaten = new HashMap<>();
    for (Feeding feeding : plan.feedings()) {
      for (Feeding.Draw draw : feeding.draws()) {
        if (own.contains(lots.get(draw.lotId()))) {
          eaten.merge(
              flow.days().segment(Timeline.day(feeding.day())), draw.pieces(), Integer::sum);
        }
      }
    }
    for (int s = 0; s < flow.days().segments().length; s++) {
      Linear sum = flow.eaten(s);
      int pieces = eaten.getOrDefault(s, 0);
      if (!sum.hasNoTerms()) {
        pin(sum, pieces);
      } else {
        possible &= pieces == 0;
      }
    }
  }

  private void pinMeals() {
    Map<Var, Integer> meals = new HashMap<>();
    for (Feeding feeding : plan.feedings()) {
      possible &= program.decisions().served().stream().anyMatch(s -> counts(s, feeding, meals));
    }
    for (Decisions.Served served : program.decisions().served()) {
      served.byChoice().forEach(v -> pin(Linear.of(v), meals.getOrDefault(v, 0)));
    }
  }

  private boolean counts(Decisions.Served served, Feeding feeding, Map<Var, Integer> meals) {
    var meal = served.demandClass().members().get(0).meal();
    Timeline timeline = program.decisions().timeline();
    int day = Timeline.day(feeding.day());
    if (day < timeline.first() || day > timeline.last()) {
      return false;
    }
    if (!meal.id().equals(feeding.mealId())
        || !within(meal.days().earliest(), feeding.day(), meal.days().latest())) {
      return false;
    }
    int segment = timeline.of(feeding.option().item()).segment(day);
    for (int x = 0; x < served.byChoice().size(); x++) {
      DemandClass.Choice choice = served.demandClass().choices().get(x);
      if (choice.option().equals(feeding.option()) && choice.segment() == segment) {
        meals.merge(served.byChoice().get(x), feeding.meals(), Integer::sum);
        said &= costsTheSame(choice, feeding.day(), meal.days().late(feeding.day()));
        return true;
      }
    }
    return false;
  }

  private static boolean within(LocalDate from, LocalDate day, LocalDate to) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  /** Within a segment the program feeds on the day that costs least. */
  private boolean costsTheSame(DemandClass.Choice choice, LocalDate day, long late) {
    Timeline timeline = program.decisions().timeline();
    return choice.lateDays() == late
        && choice.sparedNights() == timeline.sparedNights(Timeline.day(day));
  }
}
