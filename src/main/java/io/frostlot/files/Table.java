package io.frostlot.files;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The rows of one CSV file.
 *
 * @param rows those whose cells are all right; further checks may find more
 * @param whole no row had to be left out
 */
record Table(List<Row> rows, boolean whole) {
  static final Table NONE = new Table(List.of(), true);

  Table {
    rows = List.copyOf(rows);
  }

  /** Was it read to the end without finding a row? */
  boolean isEmpty() {
    return rows.isEmpty() && whole;
  }

  /** What stands in a column of the rows that have it. */
  Set<String> texts(String column) {
    Set<String> texts = new TreeSet<>();
    rows.stream().filter(row -> row.has(column)).forEach(row -> texts.add(row.text(column)));
    return texts;
  }
}
