package io.frostlot.app;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Excess;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
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
  private static final double POINT = 0.035;
  private static final int MOST_DRAWN = 2;
  private final Questions questions;
  private final Deal deal;
  private final BiFunction<Deal, List<Deal>, World> worlds;

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

  /** Drawn again where a point shows that the plans it began with were not the best. */
  Optional<SaleFinding> find() {
    World base = worlds.apply(deal, List.of());
    World given = worlds.apply(deal, List.of(deal));
    questions.looser(given, base);
    Optional<SaleFinding> curve = Optional.empty();
    for (int drawn = 0; drawn < MOST_DRAWN; drawn++) {
      Optional<Solved> without = questions.again(base, POINT / 5);
      Optional<Solved> best = questions.again(given, POINT / 5);
      if (without.isEmpty() || best.isEmpty()) {
        return curve;
      }
      if (curve.isPresent() && questions.over()) {
        return curve;
      }
      curve = Optional.of(draw(without.get(), best.get()));
      Optional<Solved> better = questions.again(given, POINT / 5);
      if (better.isEmpty() || better.get().standing().equals(best.get().standing())) {
        return curve;
      }
    }
    return curve;
  }

  private SaleFinding draw(Solved base, Solved best) {
    int turn = deal.taken(best.plan());
    List<SaleFinding.Point> points = new ArrayList<>(upTo(turn, base, best));
    List<Solved> beyond = new ArrayList<>();
    World fewer = best.world();
    for (int packs : more(turn)) {
      if (questions.over()) {
        break;
      }
      World pledged = pledged(best.world(), Pledge.Packs.atLeast(packs));
      questions.looser(fewer, pledged);
      fewer = pledged;
      Optional<Solved> more = questions.again(pledged, POINT);
      more.ifPresent(beyond::add);
      points.add(
          new SaleFinding.Point(
              packs, true, more.map(it -> questions.between(base, it)).stream().toList()));
    }
    List<Excess> reasons =
        beyond.isEmpty() ? List.of() : Excess.between(best, beyond.get(0), items(best.world()));
    return new SaleFinding.Curve(deal, points, turn, reasons);
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
      if (some > 0 && some < turn && !questions.over()) {
        World limited = atMost(some);
        questions.looser(best.world(), limited);
        if (deal instanceof Deal.OnPacks) {
          questions.looser(limited, fewer);
          fewer = limited;
        }
        questions.again(limited, POINT).ifPresent(it -> points.add(point(some, base, it)));
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
