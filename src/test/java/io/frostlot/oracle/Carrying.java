package io.frostlot.oracle;

import io.frostlot.plan.MovesPolicy;

/** The stage in which prey is carried from one freezer to another. */
final class Carrying {
  private final Tiny tiny;
  private final MovesPolicy moves;

  Carrying(Tiny tiny) {
    this.tiny = tiny;
    moves = tiny.world.scenario().policy().moves();
  }

  boolean isOn(int day) {
    return moves.everyDays() > 0 && day % moves.everyDays() == 0 && tiny.freezers.size() > 1;
  }

  /** At the start of a day any number of what came before, and was not carried yet. */
  Stage carry(int day) {
    return (state, trail, next) ->
        carry(new Step(state.cells(), state, Score.ZERO), 0, day, trail, next);
  }

  /**
   * On the way.
   *
   * @param morning what was there before anything was carried
   */
  private record Step(Cells morning, State now, Score cost) {}

  private void carry(Step step, int cell, int day, Trail trail, Stage.Next next) {
    if (cell == step.morning.size()) {
      next.add(step.now, step.cost, trail);
      return;
    }
    carry(step, cell + 1, day, trail, next);
    Cells.Kind kind = step.morning.kind(cell);
    if (step.morning.from(cell) > 0 || kind.moved() || !tiny.freezers.get(kind.freezer()).inUse()) {
      return;
    }
    for (int into = 0; into < tiny.freezers.size(); into++) {
      Cells.Kind there = tiny.moved(kind, into, day);
      if (into == kind.freezer() || !tiny.freezers.get(into).inUse() || there.useBy() < day) {
        continue;
      }
      for (int count = 1; count <= step.morning.count(cell); count++) {
        Cells cells = step.now.cells().minus(step.now.cells().indexOf(kind), count);
        State after = step.now.with(cells.plus(there, 0, count)).checked();
        Score cost = step.cost.plus(new Score(0, 0, 0, count * Amounts.of(moves.perPiece())));
        Move move = new Move.Carried(kind, into, tiny.date(day), count);
        carry(new Step(step.morning, after, cost), cell + 1, day, trail.then(move), next);
      }
    }
  }
}
