package io.frostlot.files;

import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** {@code freezer-limits.csv}: days on which freezers have less room. */
final class FreezerLimitsFile {
  private final Map<String, List<Freezer.Limit>> byFreezer = new TreeMap<>();

  private FreezerLimitsFile() {}

  /**
   * The limits that are right.
   *
   * @param freezers all rows of freezers.csv
   */
  static FreezerLimitsFile read(Table table, Table freezers) {
    FreezerLimitsFile limits = new FreezerLimitsFile();
    Map<String, Row> rows = new TreeMap<>();
    freezers.rows().forEach(row -> rows.put(row.textOr("name", ""), row));
    for (Row row : table.rows()) {
      limits.add(row, rows, freezers.whole());
    }
    return limits;
  }

  private void add(Row row, Map<String, Row> freezers, boolean allKnown) {
    String name = row.textOr("freezer", "");
    if (allKnown && row.has("freezer") && !freezers.containsKey(name)) {
      row.wrong("freezer", "a freezer of freezers.csv", Nearest.hint(name, freezers.keySet()));
    }
    Row freezer = freezers.get(name);
    if (freezer != null
        && row.has("litres")
        && freezer.has("usable_litres")
        && row.number("litres").compareTo(freezer.number("usable_litres")) > 0) {
      row.wrong(
          "litres",
          "at most its usable_litres of " + freezer.number("usable_litres").toPlainString(),
          "");
    }
    if (row.isSound() && row.has("days") && row.has("litres")) {
      byFreezer
          .computeIfAbsent(name, it -> new ArrayList<>())
          .add(
              new Freezer.Limit(
                  row.periodOr("days", Period.ALWAYS), Litres.of(row.number("litres"))));
    }
  }

  /** Limits of a freezer, in order of their days and litres. */
  List<Freezer.Limit> of(String freezer) {
    return byFreezer.getOrDefault(freezer, List.of()).stream()
        .sorted(Freezer.Limit.IN_ORDER)
        .distinct()
        .toList();
  }
}
