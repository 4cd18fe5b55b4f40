package io.frostlot.app;

import io.frostlot.plan.Difference;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Money against the litres of one freezer: solved again with any room, with what the plan for that
 * takes, and with less; plans with less room are offered to those with more, bounds go the other
 * way, so that the curve never rises.
 */
final class FreezerCurve {
  private static final double POINT = 0.06;
  private static final int BENDS = 2;

  /** More room than any collection fills. */
  private static final Litres ANY = new Litres(100_000_000_000L);

  private final Questions questions;
  private final World base;
  private final Freezer freezer;
  private final NavigableMap<Litres, Solved> points = new TreeMap<>();

  FreezerCurve(Questions questions, World base, Freezer freezer) {
    this.questions = questions;
    this.base = base;
    this.freezer = freezer;
  }

  /** Empty where not even any room was solved in time. */
  Optional<FreezerFinding.Curve> find(Solved present) {
    points.put(freezer.usable(), present);
    ask(ANY);
    if (!points.containsKey(ANY)) {
      return Optional.empty();
    }
    Litres enough = peak(points.get(ANY));
    for (Litres litres : spread(enough)) {
      ask(litres);
    }
    for (int bend = 0; bend < BENDS && !questions.over(); bend++) {
      sharpest().ifPresent(this::ask);
    }
    settle();
    Solved there = points.get(freezer.usable());
    List<FreezerFinding.Point> curve = new ArrayList<>();
    points.forEach(
        (litres, plan) ->
            curve.add(new FreezerFinding.Point(litres, plan, Difference.between(there, plan))));
    return Optional.of(new FreezerFinding.Curve(freezer, curve, enough()));
  }

  private void ask(Litres litres) {
    if (!questions.over() && !points.containsKey(litres) && litres.microlitres() > 0) {
      questions.ask(with(litres), POINT).ifPresent(it -> points.put(litres, it));
    }
  }

  /** The world with other room in the freezer. */
  private World with(Litres litres) {
    Scenario.Larder larder = base.scenario().larder();
    List<Freezer> freezers =
        larder.freezers().stream()
            .map(it -> it.name().equals(freezer.name()) ? it.withUsable(litres) : it)
            .toList();
    return base.withScenario(base.scenario().withLarder(larder.withFreezers(freezers)));
  }

  /** Half and three quarters of the room that there is, what is enough, and between them. */
  private List<Litres> spread(Litres enough) {
    long there = freezer.usable().microlitres();
    long most = enough.microlitres();
    List<Litres> litres = new ArrayList<>();
    litres.add(new Litres(Math.min(there, most) / 2));
    litres.add(new Litres(Math.min(there, most) * 3 / 4));
    litres.add(new Litres((there + most) / 2));
    litres.add(enough);
    return litres.stream().distinct().sorted().toList();
  }

  /** The middle of the wider side of the point where the slope changes most. */
  private Optional<Litres> sharpest() {
    List<Litres> known = new ArrayList<>(points.headMap(ANY).keySet());
    double most = 0;
    Optional<Litres> where = Optional.empty();
    for (int i = 1; i + 1 < known.size(); i++) {
      double change =
          Math.abs(slope(known.get(i - 1), known.get(i)) - slope(known.get(i), known.get(i + 1)));
      if (change > most) {
        most = change;
        long left = known.get(i).microlitres() - known.get(i - 1).microlitres();
        long right = known.get(i + 1).microlitres() - known.get(i).microlitres();
        Litres from = left > right ? known.get(i - 1) : known.get(i);
        where = Optional.of(new Litres(from.microlitres() + Math.max(left, right) / 2));
      }
    }
    return where;
  }

  private double slope(Litres from, Litres to) {
    double litres = to.toDouble() - from.toDouble();
    return (points.get(from).cost() - points.get(to).cost()) / litres;
  }

  /** Offers all plans to all, and hands bounds down from more room to less. */
  private void settle() {
    for (Litres litres : List.copyOf(points.keySet())) {
      questions.again(with(litres), 0).ifPresent(it -> points.put(litres, it));
      Optional.ofNullable(points.lowerEntry(litres))
          .filter(less -> less.getValue().standing().compareTo(points.get(litres).standing()) < 0)
          .ifPresent(
              less -> points.put(litres, new Solved(with(litres), less.getValue().answer())));
    }
    for (Litres litres : points.descendingKeySet()) {
      Optional.ofNullable(points.higherEntry(litres))
          .ifPresent(more -> points.put(litres, points.get(litres).atBestAs(more.getValue())));
    }
  }

  private Litres peak(Solved plan) {
    return plan.outcome().freezers().stream()
        .filter(load -> load.freezer().name().equals(freezer.name()))
        .map(FreezerLoad::peak)
        .findFirst()
        .orElse(Litres.ZERO);
  }

  /** The least room with an answer as good as with any. */
  private Litres enough() {
    Solved any = points.get(ANY);
    return points.entrySet().stream()
        .filter(point -> point.getValue().standing().compareTo(any.standing()) <= 0)
        .map(point -> point.getKey().equals(ANY) ? peak(any) : point.getKey())
        .min(Litres::compareTo)
        .orElse(ANY);
  }
}
