package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;

/**
 * The stages in which animals eat: for one demand on one day, every number of meals, by every
 * option, from every freezer.
 */
final class Meals {
  private final Tiny tiny;
  private final Margins margins;
  private final Programmes programmes;
  private final boolean anyPiece;
  private final long pastBest;

  /**
   * Meals of a tiny world.
   *
   * @param anyPiece not only the oldest piece of a freezer may be eaten
   */
  Meals(Tiny tiny, Margins margins, Programmes programmes, boolean anyPiece) {
    this.tiny = tiny;
    this.margins = margins;
    this.programmes = programmes;
    this.anyPiece = anyPiece;
    pastBest = Amounts.of(tiny.world.scenario().policy().charges().pastBest());
  }

  /** The stage of the demand with an index; on its last day what is not served is settled. */
  Stage of(int index, int day) {
    Demand demand = tiny.world.demands().get(index);
    Meal.Days days = demand.meal().days();
    long late = demand.tail() ? 0 : days.late(tiny.date(day));
    long lateCharge = late * Amounts.of(tiny.world.scenario().policy().charges().lateMeal());
    boolean last = day == Math.min(tiny.day(days.latest()), tiny.end - 1);
    return (state, trail, next) ->
        new Serving(demand, index, day, lateCharge, last ? settling(demand, index, next) : next)
            .serve(state, Score.ZERO, trail, 0);
  }

  private Stage.Next settling(Demand demand, int index, Stage.Next next) {
    return (state, added, trail) -> {
      int unmet = demand.meal().count() - state.counts()[index];
      State settled = state.withCount(index, 0);
      if (demand.tail()) {
        Score bought = Score.money(unmet * Amounts.of(demand.tailPrice()));
        next.add(settled, added.plus(bought), trail);
      } else if (unmet == 0) {
        next.add(settled, added, trail);
      } else if (tiny.world.scenario().policy().demand() == Policy.Demand.BEST_EFFORT) {
        boolean must = demand.meal().importance() == Importance.MUST;
        next.add(settled, added.plus(new Score(must ? unmet : 0, must ? 0 : unmet, 0, 0)), trail);
      }
    };
  }

  /** Serves one demand on one day. */
  private final class Serving {
    private final Demand demand;
    private final int index;
    private final int day;
    private final long lateCharge;
    private final Stage.Next next;

    Serving(Demand demand, int index, int day, long lateCharge, Stage.Next next) {
      this.demand = demand;
      this.index = index;
      this.day = day;
      this.lateCharge = lateCharge;
      this.next = next;
    }

    /** Stops here, or serves another meal by an option not before the given one. */
    void serve(State state, Score score, Trail trail, int fromOption) {
      next.add(state, score, trail);
      int served = state.counts()[index];
      if (served == demand.meal().count()) {
        return;
      }
      for (int o = fromOption; o < demand.options().size(); o++) {
        Option option = demand.options().get(o);
        Trail more = trail.then(new Move.Eaten(demand, tiny.date(day), option));
        State counted = programmes.eat(state.withCount(index, served + 1), index, o, day);
        State begun = margins.eat(counted, option, day);
        take(option, option.pieces(), begun, score.plus(Score.money(lateCharge)), more, o);
      }
    }

    private void take(Option option, int pieces, State state, Score score, Trail trail, int o) {
      if (pieces == 0) {
        serve(state, score, trail, o);
        return;
      }
      Cells cells = state.cells();
      int item = tiny.item(option.item());
      for (int cell = 0; cell < cells.size(); cell++) {
        if (cells.item(cell) == item && cells.isHere(cell, day) && mayBeTaken(cells, cell)) {
          Trail more = trail.then(new Move.Taken(cells.kind(cell), tiny.date(day), 1, true));
          Score after = score.plus(Score.money(day >= cells.pastBest(cell) ? pastBest : 0));
          take(option, pieces - 1, state.with(cells.minus(cell, 1)), after, more, o);
        }
      }
    }

    /** Of one item in one freezer the piece that goes first is eaten first. */
    private boolean mayBeTaken(Cells cells, int cell) {
      for (int before = cell - 1; before >= 0 && cells.sameGroup(before, cell); before--) {
        if (cells.isHere(before, day)) {
          return anyPiece;
        }
      }
      return true;
    }
  }
}
