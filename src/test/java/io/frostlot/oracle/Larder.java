package io.frostlot.oracle;

import io.frostlot.plan.Policy;

/**
 * The stages in which nothing comes and nobody eats: use-by, throwing away, freezer check, night.
 */
final class Larder {
  private final Tiny tiny;
  private final Policy policy;
  private final boolean anyPiece;
  private final long holding;
  private final long perLitre;
  private final Room room;

  Larder(Tiny tiny, boolean anyPiece) {
    this.tiny = tiny;
    this.anyPiece = anyPiece;
    room = new Room(tiny);
    policy = tiny.world.scenario().policy();
    holding = Amounts.of(policy.charges().holding().perPiece());
    perLitre = Amounts.of(policy.charges().holding().perLitre());
  }

  /** What is past its use-by leaves. */
  Stage leave(int day) {
    return (state, trail, next) -> {
      Cells cells = state.cells();
      for (int cell = cells.size() - 1; cell >= 0; cell--) {
        cells = cells.useBy(cell) < day ? cells.minus(cell, cells.count(cell)) : cells;
      }
      next.add(state.with(cells), Score.ZERO, trail);
    };
  }

  /** Any number of what is there is thrown away at the start of a day, the oldest first. */
  Stage throwAway(int day) {
    return (state, trail, next) -> throwAway(state, 0, day, trail, next);
  }

  private void throwAway(State state, int cell, int day, Trail trail, Stage.Next next) {
    Cells cells = state.cells();
    if (cell == cells.size()) {
      next.add(state, Score.ZERO, trail);
      return;
    }
    throwAway(state, cell + 1, day, trail, next);
    if (cells.from(cell) > 0 || !mayBeThrown(cells, cell)) {
      return;
    }
    for (int count = 1; count <= cells.count(cell); count++) {
      State after = state.with(cells.minus(cell, count));
      // a cell that is all gone leaves its place to the next, which is then the oldest
      int then = count == cells.count(cell) ? cell : cell + 1;
      throwAway(after, then, day, trail.then(thrown(cells, cell, day, count)), next);
    }
  }

  private boolean mayBeThrown(Cells cells, int cell) {
    for (int before = cell - 1; before >= 0 && cells.sameGroup(before, cell); before--) {
      if (cells.from(before) == 0) {
        return anyPiece;
      }
    }
    return true;
  }

  private Move thrown(Cells cells, int cell, int day, int count) {
    return new Move.Taken(cells.kind(cell), tiny.date(day), count, false);
  }

  /** Nothing is too full, when something has come, on the first day, or when there is less room. */
  Stage check(int day) {
    return (state, trail, next) -> {
      if (!isChecked(state, day) || room.fits(state.cells(), day)) {
        next.add(state, Score.ZERO, trail);
      }
    };
  }

  private boolean isChecked(State state, int day) {
    return state.delivered() || day == 0 || room.mayShrink(day);
  }

  /**
   * As {@link #check}, after the delivery and before the meals; where something is too full, some
   * of what was there at the start of the day has been thrown away then, in every way.
   */
  Stage checkOrThrow(int day) {
    return (state, trail, next) -> {
      if (!isChecked(state, day) || room.fits(state.cells(), day)) {
        next.add(state, Score.ZERO, trail);
      } else {
        throwAway(
            state,
            0,
            day,
            trail,
            (after, added, done) -> {
              if (room.fits(after.cells(), day)) {
                next.add(after, added, done);
              }
            });
      }
    };
  }

  /** Holding, cover and the effort of the day are counted; what came can be eaten and thrown. */
  Stage night(int day) {
    return (state, trail, next) -> {
      long money = state.ordered() ? Amounts.of(policy.charges().deliveryDay()) : 0;
      Cells cells = state.cells();
      if (day < tiny.planned) {
        money += holding * pieces(cells) + perLitre * microlitres(cells) / 1_000_000;
      }
      long lacking =
          day < tiny.planned && policy.safety().coverDays() > 0 ? lacking(state, day) : 0;
      Cells settled = Cells.NONE;
      for (int cell = 0; cell < cells.size(); cell++) {
        int from = cells.isHere(cell, day) ? 0 : cells.from(cell);
        settled = settled.plus(cells.kind(cell), from, cells.count(cell));
      }
      Cells recent = state.recent();
      int remembered = Math.max(1, policy.safety().coverDays());
      for (int cell = recent.size() - 1; cell >= 0; cell--) {
        if (day + 1 >= tiny.planned || recent.isHere(cell, day + 1 - remembered)) {
          recent = recent.minus(cell, recent.count(cell));
        }
      }
      next.add(
          new State(state.counts(), settled, recent, false, false),
          new Score(0, 0, lacking, money),
          trail);
    };
  }

  private long microlitres(Cells cells) {
    long microlitres = 0;
    for (int cell = 0; cell < cells.size(); cell++) {
      microlitres += cells.count(cell) * tiny.microlitres(cells.item(cell));
    }
    return microlitres;
  }

  private static int pieces(Cells cells) {
    int pieces = 0;
    for (int cell = 0; cell < cells.size(); cell++) {
      pieces += cells.count(cell);
    }
    return pieces;
  }

  /** By item, what came within the days of cover less what is there and can be eaten. */
  private long lacking(State state, int day) {
    long[] byItem = new long[tiny.items.size()];
    Cells recent = state.recent();
    for (int cell = 0; cell < recent.size(); cell++) {
      byItem[recent.item(cell)] += recent.isHere(cell, day) ? recent.count(cell) : 0;
    }
    Cells cells = state.cells();
    for (int cell = 0; cell < cells.size(); cell++) {
      byItem[cells.item(cell)] -= cells.isHere(cell, day) ? cells.count(cell) : 0;
    }
    long lacking = 0;
    for (long one : byItem) {
      lacking += Math.max(0, one);
    }
    return lacking;
  }
}
