package io.frostlot.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Collects the problems of all files, past a thousand in one file only their count, and what can be
 * accepted but should be looked at.
 */
final class Problems {
  private static final int MOST_PER_FILE = 1000;
  private final List<Problem> found = new ArrayList<>();
  private final Map<String, Integer> countByFile = new LinkedHashMap<>();
  private final Set<String> toLookAt = new LinkedHashSet<>();

  void add(Problem problem) {
    if (countByFile.merge(problem.where().file(), 1, Integer::sum) <= MOST_PER_FILE) {
      found.add(problem);
    }
  }

  /** Adds a sentence on what is accepted; the same one is kept once. */
  void lookAt(String sentence) {
    toLookAt.add(sentence);
  }

  List<String> toLookAt() {
    return List.copyOf(toLookAt);
  }

  int count() {
    return countByFile.values().stream().mapToInt(Integer::intValue).sum();
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>(found);
    countByFile.forEach(
        (file, count) -> {
          if (count > MOST_PER_FILE) {
            all.add(
                new Problem(
                    Where.file(file),
                    count + " problems",
                    "none; the first " + MOST_PER_FILE + " are shown",
                    "Mend them and try again."));
          }
        });
    return List.copyOf(all);
  }
}
