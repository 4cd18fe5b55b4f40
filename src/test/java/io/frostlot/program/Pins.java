package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A program of unmerged meals held to a plan: rows that give every decision the plan's value. What
 * only follows from the rules (price steps, what falls short) stays free.
 */
final class Pins {
  private final Program program;
  private final Plan plan;
  private final Levels levels;
  private final List<Model.Row> rows = new ArrayList<>();
  private final Set<Lot> pinned = new HashSet<>();
  private boolean said = true;
  private boolean possible = true;

  private Pins(Program program, Plan plan) {
    this.program = program;
    this.plan = plan;
    levels = new Levels(plan);
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

  private Held held(Lot lot, Flow flow, Flow.Part part) {
    List<Flow> flows =
        program.decisions().flows().stream()
            .filter(other -> other.parts().stream().anyMatch(it -> it.lot().equals(part.lot())))
            .toList();
    Optional<Integer> until =
        flows.stream()
            .filter(other -> flows.size() > 1 && !other.shelf().pastBest())
            .flatMap(other -> other.parts().stream())
            .filter(it -> it.lot().equals(part.lot()))
            .map(Flow.Part::until)
            .findFirst();
    return new Held(lot, part, until, flow.shelf().pastBest());
  }

  /** Of a lot that is in two flows, those that are not eaten or thrown away in the first. */
  private int kept(Held held) {
    return held.until()
        .map(last -> levels.beforeMeals(held.lot(), Timeline.date(last + 1)))
        .orElse(0);
  }

  private void pin(Flow flow) {
    List<Held> own = new ArrayList<>();
    for (Flow.Part part : flow.parts()) {
      List<Held> here =
          plan.lots().stream()
              .filter(lot -> Held.isOf(lot, part))
              .map(lot -> held(lot, flow, part))
              .toList();
      pin(
          part.pieces(),
          here.stream()
              .mapToInt(
                  it ->
                      it.after() && it.until().isPresent()
                          ? kept(it)
                          : it.lot().pieces() - kept(it))
              .sum());
      own.addAll(here);
    }
    own.forEach(held -> pinned.add(held.lot()));
    pinStock(flow, own);
    pinEaten(flow, own);
  }

  private void pinStock(Flow flow, List<Held> own) {
    for (int k = 0; k < flow.intervals(); k++) {
      int first = flow.days().intervals()[k];
      int present = 0;
      for (Held held : own) {
        Lot lot = held.lot();
        boolean here = Timeline.day(lot.takenFrom()) <= first && Timeline.day(lot.useBy()) >= first;
        int pieces =
            levels.beforeMeals(lot, Timeline.date(first)) - (held.after() ? 0 : kept(held));
        present += here && held.isOn(first) ? pieces : 0;
      }
      pin(Linear.of(flow.stock(k)).plus(flow.thrown(k)), present);
      if (flow.days().intervalEnd(k) > first && !flow.thrown(k).hasNoTerms()) {
        pin(flow.thrown(k), thrownOn(own, first + 1));
      }
      said &=
          !program.decisions().timeline().isHoldingCharged()
              || Held.saysWhatIsThrown(flow, k, day -> thrownOn(own, day));
    }
  }

  /** What is thrown away at the start of a day was in the flow on the day before. */
  private int thrownOn(List<Held> own, int day) {
    int thrown = 0;
    for (Discard discard : plan.discards()) {
      boolean here =
          own.stream()
              .anyMatch(held -> held.lot().id().equals(discard.lotId()) && held.isOn(day - 1));
      thrown += here && Timeline.day(discard.day()) == day ? discard.pieces() : 0;
    }
    return thrown;
  }

  private void pinEaten(Flow flow, List<Held> own) {
    Map<Integer, Integer> eaten = new HashMap<>();
    for (Feeding feeding : plan.feedings()) {
      int day = Timeline.day(feeding.day());
      for (Feeding.Draw draw : feeding.draws()) {
        if (own.stream().anyMatch(held -> held.lot().id().equals(draw.lotId()) && held.isOn(day))) {
          eaten.merge(flow.days().segment(day), draw.pieces(), Integer::sum);
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
        && choice.sparedNights() == timeline.sparedNights(day, new Period(day, day));
  }
}
