package io.frostlot.files;

import io.frostlot.keeping.Plate;
import io.frostlot.units.Percent;
import io.frostlot.units.SizeBand;
import java.math.BigDecimal;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns of animals.csv that say what should be on an animal's plate. */
record PlateCells(Row row) {
  private static final Pattern SHARE = Pattern.compile("([^:]+):(\\d{1,3}(\\.\\d{1,3})?)");
  private static final BigDecimal ALL = new BigDecimal(100);

  /** The plate; of use where the row is still sound afterwards. */
  Plate read() {
    accepted("preferred_kind");
    accepted("last_kind");
    SortedMap<String, Percent> shares = shares();
    row.together("last_kind", "last_piece_g");
    Plate.Change change = change();
    return new Plate(shares, change);
  }

  private void accepted(String column) {
    if (row.has(column) && !row.texts("kinds").contains(row.text(column))) {
      row.wrong(column, "one of its kinds", "");
    }
  }

  /** What is typed; of a kind that is not preferred nothing where it is not. */
  private SortedMap<String, Percent> shares() {
    SortedMap<String, Percent> shares = new TreeMap<>();
    String preferred = row.textOr("preferred_kind", "");
    if (!preferred.isEmpty()) {
      row.texts("kinds").forEach(kind -> shares.put(kind, Percent.ZERO));
      shares.remove(preferred);
    }
    Set<String> kinds = Set.copyOf(row.texts("kinds"));
    SortedMap<String, Percent> typed = new TreeMap<>();
    for (String text : row.has("largest_shares") ? row.texts("largest_shares") : Set.<String>of()) {
      Matcher share = SHARE.matcher(text);
      boolean right =
          share.matches()
              && kinds.contains(share.group(1))
              && !share.group(1).equals(preferred)
              && new BigDecimal(share.group(2)).compareTo(ALL) <= 0;
      if (!right || typed.put(share.group(1), Percent.of(share.group(2))) != null) {
        row.wrong(
            "largest_shares",
            Problem.quote(text),
            "its other kinds, each once with its percentage, such as rat:25",
            "");
      }
    }
    shares.putAll(typed);
    return shares;
  }

  private Plate.Change change() {
    boolean counted = row.isTyped("meals_between_changes");
    boolean known = row.isTyped("last_kind") && row.isTyped("last_piece_g");
    String change =
        row.textOr("changes", counted ? "seldom" : row.isTyped("last_kind") ? "keep" : "free");
    if (counted != change.equals("seldom")) {
      row.wrong(
          counted ? "changes" : "meals_between_changes",
          counted ? "seldom, or nothing" : "a number",
          "The two belong together.");
    }
    if (change.equals("never") && !row.isTyped("last_kind")) {
      row.wrong("last_kind", "a kind", "What never changes must be known.");
    }
    if (!row.isSound()) {
      return new Plate.Free();
    }
    Set<SizeBand> before =
        known ? Set.of(SizeBand.of(row.text("last_kind"), row.grams("last_piece_g"))) : Set.of();
    return switch (change) {
      case "never" -> new Plate.Never(before.iterator().next());
      case "keep" -> new Plate.Keep(before);
      case "seldom" -> new Plate.Seldom(row.integer("meals_between_changes"), before);
      default -> new Plate.Free();
    };
  }
}
