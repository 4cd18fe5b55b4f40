package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Lot;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A strengthening: meals that must be fed by a day need orders and whole packs by then. Follows
 * from meals-met, every-piece, shelf-life and one-order, and cuts off no plan: it holds whatever
 * prices are.
 *
 * <p>For a set G of planning meals whose options all lie in a set of items, all due by a day: with
 * S the orders that can serve any of them, stock the meals that pieces in hand or under way could
 * serve at most, need = meals(G) - stock - sum of missed over G and m(p) the meals that one pack
 * could serve at most (in parts of a meal too: pieces of two packs may make one): sum over S of
 * open + missed / need &gt;= 1; sum over S and p of ceil(m(p) / d) x count + ceil(1 / d) x missed
 * &gt;= ceil(need / d), with d the largest m(p) and need without what is missed (Chvatal-Gomory). G
 * is, for each set of items that some class of meals has as its options, everything due by one day
 * after the other.
 */
final class CoverRows {
  private static final String ID = "cover-rows";
  private static final double LEAST_GAIN = 1.1;
  private static final double WHOLE = 1e-6;
  private final Program program;
  private final Timeline timeline;
  private final Map<Slot, Integer> lasts;
  private final Set<List<Object>> seen = new HashSet<>();

  CoverRows(Program program) {
    this.program = program;
    timeline = program.decisions().timeline();
    lasts = lasts(program);
  }

  /** A class of planning meals and the days it can be fed on, over all its members. */
  private record Due(Decisions.Served served, Set<String> items, int earliest, int latest) {}

  void add() {
    List<Due> dues = new ArrayList<>();
    for (Decisions.Served served : program.decisions().served()) {
      if (!served.demandClass().tail() && !served.byChoice().isEmpty()) {
        dues.add(due(served));
      }
    }
    dues.sort(Comparator.comparingInt(Due::latest));
    Set<Set<String>> itemSets = new LinkedHashSet<>();
    dues.forEach(due -> itemSets.add(due.items()));
    for (Set<String> items : itemSets) {
      List<Due> within = dues.stream().filter(due -> items.containsAll(due.items())).toList();
      Reached reached = new Reached();
      for (int i = 0; i < within.size(); i++) {
        if (i + 1 == within.size() || within.get(i + 1).latest() > within.get(i).latest()) {
          cover(items, within.subList(0, i + 1), reached);
        }
      }
    }
  }

  private Due due(Decisions.Served served) {
    Set<String> items = new HashSet<>();
    served.demandClass().choices().forEach(choice -> items.add(choice.option().item().id()));
    int earliest = Integer.MAX_VALUE;
    int latest = Integer.MIN_VALUE;
    for (Alike alike : served.demandClass().alike()) {
      Meal.Days days = alike.first().meal().days();
      earliest = Math.min(earliest, timeline.at(days.earliest()));
      latest = Math.max(latest, timeline.at(days.latest()));
    }
    return new Due(served, items, earliest, latest);
  }

  /** What rows of earlier days say already: later ones are kept only where they say more. */
  private static final class Reached {
    private boolean order;
    private double packs;
  }

  private void cover(Set<String> items, List<Due> group, Reached reached) {
    int earliest = group.stream().mapToInt(Due::earliest).min().orElseThrow();
    int latest = group.get(group.size() - 1).latest();
    Map<String, Integer> fewestPieces = new LinkedHashMap<>();
    int meals = 0;
    Linear missed = new Linear();
    for (Due due : group) {
      meals += due.served().demandClass().count();
      missed.plus(1, due.served().missed());
      for (DemandClass.Choice choice : due.served().demandClass().choices()) {
        Option option = choice.option();
        fewestPieces.merge(option.item().id(), option.pieces(), Math::min);
      }
    }
    double need = meals - stockMeals(items, fewestPieces, earliest, latest);
    if (need < WHOLE) {
      return;
    }
    Linear orders = new Linear();
    Map<Var, Double> packs = new LinkedHashMap<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      if (timeline.at(order.slot().arrivesLatest()) > latest || isGone(order, earliest)) {
        continue;
      }
      boolean serves = false;
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        double served = mealsOf(pack.pack(), fewestPieces);
        if (served > 0) {
          packs.put(pack.count(), served);
          serves = true;
        }
      }
      if (serves) {
        orders.plus(1, order.open());
      }
    }
    if (!reached.order) {
      reached.order = true;
      keep(orders.plus(1.0 / need, missed), 1);
    }
    double divisor = packs.values().stream().mapToDouble(m -> m).max().orElse(1);
    double least = Math.ceil(need / divisor - WHOLE);
    if (least > reached.packs && least >= LEAST_GAIN * need / divisor) {
      reached.packs = least;
      Linear whole = new Linear().plus(Math.ceil(1 / divisor - WHOLE), missed);
      packs.forEach((count, served) -> whole.plus(Math.ceil(served / divisor - WHOLE), count));
      keep(whole, least);
    }
  }

  private void keep(Linear expression, double least) {
    Linear.Terms terms = expression.terms();
    List<Object> row = new ArrayList<>();
    for (int i = 0; i < terms.variables().length; i++) {
      row.add(terms.variables()[i]);
      row.add(terms.coefficients()[i]);
    }
    row.add(least);
    if (seen.add(row)) {
      program.model().atLeast(ID, expression, least);
    }
  }

  private boolean isGone(OrderDecisions order, int earliest) {
    return lasts.getOrDefault(order.slot(), Integer.MIN_VALUE) < earliest;
  }

  /** The last day on which anything of an order is there. */
  private static Map<Slot, Integer> lasts(Program program) {
    Map<Slot, Integer> lasts = new HashMap<>();
    for (Flow flow : program.decisions().flows()) {
      for (Flow.Part part : flow.parts()) {
        if (part.lot().origin() instanceof Lot.Ordered ordered) {
          lasts.merge(ordered.slot(), part.until(), Math::max);
        }
      }
    }
    return lasts;
  }

  /** Not rounded: pieces of two packs may make one meal. */
  private static double mealsOf(Pack pack, Map<String, Integer> fewestPieces) {
    return pack.parts().stream()
        .filter(part -> fewestPieces.containsKey(part.item().id()))
        .mapToDouble(part -> (double) part.pieces() / fewestPieces.get(part.item().id()))
        .sum();
  }

  /** Meals that what is in hand or under way could serve at most; a lot may be in several flows. */
  private double stockMeals(
      Set<String> items, Map<String, Integer> fewestPieces, int earliest, int latest) {
    Map<Lot.Origin, Double> byLot = new LinkedHashMap<>();
    for (Flow flow : program.decisions().flows()) {
      Integer fewest = fewestPieces.get(flow.item().id());
      if (!items.contains(flow.item().id()) || fewest == null) {
        continue;
      }
      for (Flow.Part part : flow.parts()) {
        boolean ordered = part.lot().origin() instanceof Lot.Ordered;
        if (!ordered && part.from() <= latest && part.until() >= earliest) {
          double most = program.most(part.pieces()) / fewest;
          byLot.merge(part.lot().origin(), most, Math::max);
        }
      }
    }
    return byLot.values().stream().mapToDouble(meals -> meals).sum();
  }
}
