package io.frostlot.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Guesses what a misspelt name was meant to be. */
final class Nearest {
  private static final int FAR = 3;

  private Nearest() {}

  /** A sentence with the nearest name by edit distance, or nothing where none is near. */
  static String hint(String typed, Collection<String> known) {
    String name = typed.length() > 100 ? typed.substring(0, 100) : typed;
    return known.stream()
        .sorted()
        .min(Comparator.comparingInt(it -> distance(name, it)))
        .filter(it -> distance(name, it) <= Math.min(FAR, it.length() / 2))
        .map(it -> "Maybe " + it + " was meant.")
        .orElse("");
  }

  /** Levenshtein distance, capitals and kind of separator disregarded. */
  private static int distance(String typed, String known) {
    String a = typed.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    String b = known.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int swap = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(swap, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[b.length()];
  }
}
