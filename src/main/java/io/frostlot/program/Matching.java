package io.frostlot.program;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Pieces given to needs, each of which takes pieces of certain items only, so that as few as can be
 * are lacking (augmenting paths: Kuhn 1955, The Hungarian method).
 */
final class Matching {
  private final List<Set<String>> needs;
  private final Map<String, Long> left;
  private final Map<Given, Integer> given = new HashMap<>();

  private record Given(Set<String> need, String item) {}

  private Matching(List<Set<String>> needs, Map<String, Long> there) {
    this.needs = needs;
    left = new HashMap<>(there);
  }

  /**
   * Pieces lacking.
   *
   * @param needs pieces by the items that would do
   * @param there pieces by item
   */
  static long lacking(Map<Set<String>, Integer> needs, Map<String, Long> there) {
    Matching matching = new Matching(List.copyOf(needs.keySet()), there);
    long lacking = 0;
    for (Map.Entry<Set<String>, Integer> need : needs.entrySet()) {
      int met = 0;
      while (met < need.getValue() && matching.give(need.getKey(), new HashSet<>())) {
        met++;
      }
      lacking += need.getValue() - met;
    }
    return lacking;
  }

  /** Gives one piece more, where it must be taken from a need that can have another for it. */
  private boolean give(Set<String> need, Set<String> tried) {
    for (String item : need) {
      if (tried.add(item) && (takeFree(item) || takeFromOther(item, tried))) {
        given.merge(new Given(need, item), 1, Integer::sum);
        return true;
      }
    }
    return false;
  }

  private boolean takeFree(String item) {
    long free = left.getOrDefault(item, 0L);
    left.put(item, Math.max(0, free - 1));
    return free > 0;
  }

  private boolean takeFromOther(String item, Set<String> tried) {
    for (Set<String> other : needs) {
      if (given.getOrDefault(new Given(other, item), 0) > 0 && give(other, tried)) {
        given.merge(new Given(other, item), -1, Integer::sum);
        return true;
      }
    }
    return false;
  }
}
