package io.frostlot.oracle;

/** One step of a day: what may come next, and what it adds to the score. */
interface Stage {
  void from(State state, Trail trail, Next next);

  /** Takes what may come next. */
  interface Next {
    void add(State state, Score added, Trail trail);
  }
}
