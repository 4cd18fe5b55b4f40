package io.frostlot.files;

import java.util.ArrayList;
import java.util.List;

/** Collects the problems of all files; past a thousand the rest is only mentioned. */
final class Problems {
  private static final int MOST = 1000;
  private final List<Problem> found = new ArrayList<>();
  private int dropped;

  void add(Problem problem) {
    if (found.size() < MOST) {
      found.add(problem);
    } else {
      dropped++;
    }
  }

  int count() {
    return found.size() + dropped;
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>(found);
    if (dropped > 0) {
      all.add(
          new Problem(
              found.get(found.size() - 1).where(),
              dropped + " more problems after this one",
              "at most " + MOST + " in all",
              "Mend the first ones and try again."));
    }
    return List.copyOf(all);
  }
}
