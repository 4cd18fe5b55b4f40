package io.frostlot.files;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the cells of one line into a {@link Row}. */
final class RowReader {
  private static final int LONGEST_CELL = 10_000;
  private final TableSchema schema;
  private final List<String> columns;
  private final char separator;
  private final Problems problems;
  private final Map<String, Set<String>> seen = new HashMap<>();

  RowReader(TableSchema schema, List<String> columns, char separator, Problems problems) {
    this.schema = schema;
    this.columns = columns;
    this.separator = separator;
    this.problems = problems;
    schema.fields().forEach(field -> seen.put(field.name(), new HashSet<>()));
  }

  /** The row; empty where all its cells are blank or one of them is wrong. */
  Optional<Row> read(List<String> cells, Where line) {
    if (cells.stream().allMatch(String::isEmpty)) {
      return Optional.empty();
    }
    Map<String, String> typed = new HashMap<>();
    Map<String, Object> values = new HashMap<>();
    Row row = new Row(line, values, typed, problems);
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty() && i < columns.size()) {
        typed.put(columns.get(i), cells.get(i));
      } else if (!cells.get(i).isEmpty()) {
        row.wrong(
            "",
            Problem.quote(cells.get(i)) + " after the last column",
            "no more cells than columns",
            separator == ',' ? "A cell that holds a comma must stand in quotes." : "");
        return Optional.empty();
      }
    }
    schema.fields().forEach(field -> readCell(field, row, typed, values));
    return row.isSound() ? Optional.of(row) : Optional.empty();
  }

  private void readCell(
      TableSchema.Field field, Row row, Map<String, String> typed, Map<String, Object> values) {
    String name = field.name();
    String cell = typed.getOrDefault(name, field.defaultText());
    if (cell.isEmpty()) {
      if (field.isRequired()) {
        row.wrong(name, field.cell().expected(), "");
      }
      return;
    }
    if (cell.length() > LONGEST_CELL) {
      row.wrong(name, "at most " + LONGEST_CELL + " characters", "");
      return;
    }
    Cell.Outcome outcome = field.cell().read(withPoint(field, cell));
    if (outcome instanceof Cell.Wrong wrong) {
      row.wrong(name, wrong.expected(), wrong.hint());
    } else if (field.isUnique() && !seen.get(name).add(cell)) {
      String article = name.matches("[aeiou].*") ? "an " : "a ";
      row.wrong(name, article + name + " that no other row has", "");
    } else {
      values.put(name, ((Cell.Value) outcome).value());
    }
  }

  /** A decimal comma becomes a point where the comma does not separate cells. */
  private String withPoint(TableSchema.Field field, String cell) {
    boolean comma =
        separator != ',' && field.cell() instanceof Cell.Figure && cell.indexOf('.') < 0;
    return comma ? cell.replace(',', '.') : cell;
  }
}
