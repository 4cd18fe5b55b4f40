package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Excess;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * The net saving of a deal against the packs bought: up to those of the best plan a sale is taken
 * on no more than so many, and of what money off orders or free shipping is about no more than so
 * many are bought while it lasts; beyond it at least so many are bought. Each point is solved
 * again.
 */
final class SaleCurve {
  private static final double POINT = 0.03;
  private static final int MOST_DRAWN = 3;
  private final Questions questions;
  private final Deal deal;
  private final BiFunction<Deal, List<Deal>, World> worlds;
  private final Set<World> asked = new LinkedHashSet<>();

  /**
   * A curve that is not drawn yet.
   *
   * @param worlds with the deal in other forms
   */
  SaleCurve(Questions questions, Deal deal, BiFunction<Deal, List<Deal>, World> worlds) {
    this.questions = questions;
    this.deal = deal;
    this.worlds = worlds;
  }

  /**
   * Drawn again where points show that the plans it began with were not the best.
   *
   * @param until share of all time to make it more certain
   */
  Optional<SaleFinding> find(double until) {
    World base = worlds.apply(deal, List.of());
    World given = worlds.apply(deal, List.of(deal));
    questions.looser(given, base);
    asked.addAll(List.of(base, given));
    Optional<SaleFinding> curve = draw(base, given);
    Narrowing narrowing = new Narrowing(questions, POINT);
    for (int drawn = 1; drawn < MOST_DRAWN && curve.isPresent() && !questions.over(); drawn++) {
      narrowing.run(asked, until);
      curve = draw(base, given);
    }
    return curve.isPresent() ? draw(base, given) : curve;
  }

  private Optional<SaleFinding> draw(World base, World given) {
    Optional<Solved> without = questions.again(base, 0);
    return questions.again(given, 0).flatMap(best -> without.map(it -> draw(it, best)));
  }

  private SaleFinding draw(Solved base, Solved best) {
    int turn = deal.taken(best.plan());
    List<SaleFinding.Point> points = new ArrayList<>(upTo(turn, base, best));
    List<Solved> beyond = new ArrayList<>();
    World fewer = best.world();
    for (int packs : more(turn)) {
      World pledged = pledged(best.world(), Pledge.Packs.atLeast(packs));
      questions.looser(fewer, pledged);
      fewer = pledged;
      asked.add(pledged);
      questions.learn(best.plan());
      Optional<Solved> more = questions.ask(pledged, POINT);
      more.ifPresent(beyond::add);
      if (more.isPresent() || !questions.over()) {
        points.add(
            new SaleFinding.Point(
                packs, true, more.map(it -> questions.between(base, it)).stream().toList()));
      }
    }
    List<Excess> reasons =
        beyond.isEmpty() ? List.of() : reasons(best, beyond.get(0), items(best.world()));
    boolean sure =
        best.answer() instanceof Answer.Proven && (turn == 0 || isKnownToPay(base, best));
    double box = Gap.boxCharge(best.answer().plan()).map(Money::toDouble).orElse(0.0);
    return new SaleFinding.Curve(deal, points, turn, sure, reasons, box);
  }

  /** That meals suffer only where it is known that they must. */
  private static List<Excess> reasons(Solved best, Solved beyond, Set<String> items) {
    boolean known = beyond.answer().bound().isPresent();
    return Excess.between(best, beyond, items).stream()
        .filter(reason -> known || reason.kind() != Excess.Kind.MEALS_SUFFER)
        .toList();
  }

  /** Or might going without it be as good, if only its best plan were found? */
  private boolean isKnownToPay(Solved base, Solved best) {
    Difference difference = questions.between(base, best);
    return base.answer() instanceof Answer.Proven
        || (difference.sameMeals() && difference.saves().least().orElse(0) > 0);
  }

  /** Points up to the best plan, each known to allow no more than the next. */
  private List<SaleFinding.Point> upTo(int turn, Solved base, Solved best) {
    TreeSet<Integer> packs = new TreeSet<>();
    for (int quarter = 1; quarter < 4; quarter++) {
      packs.add((turn * quarter + 3) / 4);
    }
    packs.add(turn - 1);
    List<SaleFinding.Point> points = new ArrayList<>();
    points.add(point(0, base, base));
    World fewer = base.world();
    for (int some : packs) {
      if (some > 0 && some < turn) {
        World limited = atMost(some);
        questions.looser(best.world(), limited);
        if (deal instanceof Deal.OnPacks) {
          questions.looser(limited, fewer);
          fewer = limited;
        }
        asked.add(limited);
        questions.learn(best.plan());
        questions.ask(limited, POINT).ifPresent(it -> points.add(point(some, base, it)));
      }
    }
    if (turn > 0) {
      points.add(point(turn, base, best));
    }
    return points;
  }

  private SaleFinding.Point point(int packs, Solved base, Solved some) {
    Difference between = questions.between(base, some);
    Difference difference =
        deal instanceof Deal.OnPacks sale
            ? between.within(0, DealWorth.of(base.world(), sale, packs))
            : between;
    return new SaleFinding.Point(packs, false, List.of(difference));
  }

  private static Set<Integer> more(int turn) {
    return new TreeSet<>(List.of(turn + 1, turn + 2 + (turn + 3) / 4, turn + 4 + (turn + 1) / 2));
  }

  /** The deal with at most so many packs of it. */
  private World atMost(int packs) {
    return deal instanceof Deal.OnPacks sale
        ? worlds.apply(deal, List.of(sale.atMost(packs)))
        : pledged(worlds.apply(deal, List.of(deal)), Pledge.Packs.atMost(packs));
  }

  private World pledged(World world, Pledge.Packs packs) {
    return world.withPledges(List.of(deal.pledge(world, packs)));
  }

  private Set<String> items(World world) {
    return world.supplier(deal.supplier()).sheet().packs().stream()
        .filter(deal::covers)
        .flatMap(Pack::items)
        .map(Item::id)
        .collect(Collectors.toSet());
  }
}
