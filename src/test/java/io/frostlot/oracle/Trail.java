package io.frostlot.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Everything done so far; trails that part later share their beginning. */
record Trail(Optional<Trail> before, Optional<Move> last) {
  static final Trail START = new Trail(Optional.empty(), Optional.empty());

  Trail then(Move move) {
    return new Trail(Optional.of(this), Optional.of(move));
  }

  List<Move> moves() {
    List<Move> moves = new ArrayList<>();
    for (Optional<Trail> trail = Optional.of(this); trail.isPresent(); trail = trail.get().before) {
      trail.get().last.ifPresent(moves::add);
    }
    Collections.reverse(moves);
    return moves;
  }
}
