package io.frostlot.app;

import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Money against the litres of one freezer: planned again with any room, with what the plan for that
 * takes, and with less. More room is looser: the curve never rises.
 */
final class FreezerCurve {
  private static final double ANY_ROOM = 0.06;
  private static final double POINT = 0.055;
  private static final double HALVED = 0.1;
  private static final long TENTH = 100_000;
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

  /** The bound of any room holds for less: it is looked for beside all plans. */
  void prepare() {
    questions.looser(with(ANY), base);
    questions.boundBeside(with(ANY), 1);
  }

  /**
   * Empty where not even any room was solved in time.
   *
   * @param until share of all time to make it more certain
   */
  Optional<FreezerFinding.Curve> find(Solved present, double until) {
    points.put(freezer.usable(), present);
    ask(ANY, ANY_ROOM);
    if (!points.containsKey(ANY)) {
      return Optional.empty();
    }
    for (Litres litres : spread(peak(points.get(ANY)))) {
      ask(litres, POINT);
    }
    for (int bend = 0; bend < BENDS && !questions.over(); bend++) {
      sharpest().ifPresent(litres -> ask(litres, POINT));
    }
    new Narrowing(questions, POINT).run(points.keySet().stream().map(this::with).toList(), until);
    settle();
    Solved there = points.get(freezer.usable());
    List<FreezerFinding.Point> curve = new ArrayList<>();
    points.forEach(
        (litres, plan) ->
            curve.add(new FreezerFinding.Point(litres, plan, questions.between(there, plan))));
    return Optional.of(new FreezerFinding.Curve(freezer, curve, enough()));
  }

  /**
   * Where there is no plan with the room that there is: the room that the plan for any room takes,
   * and then less, halved between what is known to do and what is not; what is not settled then is
   * looked at once more.
   *
   * @param until share of all time to halve it
   */
  FreezerFinding.RoomInstead instead(double share, double until) {
    Optional<Solved> any = questions.ask(with(ANY), share);
    if (any.isEmpty()) {
      return new FreezerFinding.RoomInstead(
          freezer, List.of(), freezer.usable(), questions.isSettled(with(ANY)));
    }
    Litres none = freezer.usable();
    Litres tried = none;
    Litres enough = shown(peak(any.get()));
    Optional<Litres> middle = between(tried, enough);
    while (middle.isPresent() && !questions.over() && 1 - questions.shareLeft() < until) {
      World world = with(middle.get());
      questions.looser(with(ANY), world);
      Optional<Solved> plan = questions.ask(world, HALVED);
      if (plan.isPresent()) {
        enough = shown(peak(plan.get()));
      } else {
        tried = middle.get();
        none = questions.isSettled(world) ? tried : none;
      }
      middle = between(tried, enough);
    }
    if (!tried.equals(none)) {
      World world = with(tried);
      double rest = Math.max(0, until - 1 + questions.shareLeft());
      Optional<Solved> plan = questions.again(world, rest);
      enough = plan.map(it -> shown(peak(it))).orElse(enough);
      none = plan.isEmpty() && questions.isSettled(world) ? tried : none;
    }
    return new FreezerFinding.RoomInstead(freezer, List.of(enough), none, false);
  }

  /** Begun with the plan of the nearest room. */
  private void ask(Litres litres, double share) {
    if (questions.over() || points.containsKey(litres) || litres.microlitres() <= 0) {
      return;
    }
    World world = with(litres);
    Optional.ofNullable(points.lowerEntry(litres))
        .ifPresent(less -> nearTo(less.getValue(), world, less.getValue().world()));
    Optional.ofNullable(points.higherEntry(litres))
        .ifPresent(more -> nearTo(more.getValue(), more.getValue().world(), world));
    questions.ask(world, share).ifPresent(it -> points.put(litres, it));
  }

  private void nearTo(Solved plan, World more, World less) {
    questions.looser(more, less);
    questions.learn(plan.plan());
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

  /** Less room down to half, and more up to what is enough; the nearest to what there is first. */
  private List<Litres> spread(Litres enough) {
    long there = freezer.usable().microlitres();
    long most = roundedUp(enough.microlitres());
    long least = Math.min(there, most);
    return Stream.of(most, (there + most) / 2, least * 9 / 10, least * 3 / 4, least / 2)
        .map(FreezerCurve::roundedUp)
        .distinct()
        .sorted(Comparator.comparingLong(litres -> Math.abs(litres - there)))
        .map(Litres::new)
        .toList();
  }

  private static Litres shown(Litres litres) {
    return new Litres(roundedUp(litres.microlitres()));
  }

  /** To tenths of a litre, as they are shown, where there are several. */
  private static long roundedUp(long microlitres) {
    return microlitres < TENTH ? microlitres : (microlitres + TENTH - 1) / TENTH * TENTH;
  }

  /** Where meals begin to be missed; else where the slope changes most. */
  private Optional<Litres> sharpest() {
    List<Litres> known = new ArrayList<>(points.headMap(ANY).keySet());
    for (int i = known.size() - 1; i > 0; i--) {
      if (!sameMeals(known.get(i - 1), known.get(i))) {
        return between(known.get(i - 1), known.get(i));
      }
    }
    double most = 0;
    Optional<Litres> where = Optional.empty();
    for (int i = 1; i + 1 < known.size(); i++) {
      Litres at = known.get(i);
      double change = Math.abs(slope(known.get(i - 1), at) - slope(at, known.get(i + 1)));
      if (change > most) {
        most = change;
        long left = at.microlitres() - known.get(i - 1).microlitres();
        long right = known.get(i + 1).microlitres() - at.microlitres();
        where = left > right ? between(known.get(i - 1), at) : between(at, known.get(i + 1));
      }
    }
    return where;
  }

  private double slope(Litres from, Litres to) {
    double litres = to.toDouble() - from.toDouble();
    return (points.get(from).cost() - points.get(to).cost()) / litres;
  }

  private boolean sameMeals(Litres less, Litres more) {
    return points.get(less).standing().sameBeforeMoney(points.get(more).standing());
  }

  /** Their middle; empty where that is as good as one of them. */
  private static Optional<Litres> between(Litres less, Litres more) {
    Litres middle = new Litres(roundedUp((less.microlitres() + more.microlitres()) / 2));
    return middle.equals(less) || middle.equals(more) ? Optional.empty() : Optional.of(middle);
  }

  /** Takes up for each point all that was found since, and what was found for less room. */
  private void settle() {
    for (Litres litres : List.copyOf(points.keySet())) {
      questions.again(with(litres), 0).ifPresent(it -> points.put(litres, it));
      Optional.ofNullable(points.lowerEntry(litres))
          .ifPresent(
              less -> points.computeIfPresent(litres, (at, it) -> it.orBetter(less.getValue())));
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
        .map(point -> point.getKey().equals(ANY) ? shown(peak(any)) : point.getKey())
        .min(Litres::compareTo)
        .orElse(ANY);
  }
}
