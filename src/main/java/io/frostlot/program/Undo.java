package io.frostlot.program;

import java.util.ArrayList;
import java.util.List;

/** Changes that can be taken back, the last one first. */
final class Undo {
  private final List<Runnable> changes = new ArrayList<>();

  void add(Runnable back) {
    changes.add(back);
  }

  /** Where to come back to. */
  int mark() {
    return changes.size();
  }

  void backTo(int mark) {
    for (int i = changes.size() - 1; i >= mark; i--) {
      changes.remove(i).run();
    }
  }

  /** Changes so far are not taken back any more. */
  void forget() {
    changes.clear();
  }
}
