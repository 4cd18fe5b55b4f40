package io.frostlot.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the first line of a CSV file: which column is which field of the schema. */
record Header(TableSchema schema, Where where, Problems problems) {
  /** Empty where a column is unknown, missing or there twice: then the rows make no sense. */
  Optional<RowReader> read(List<String> header, char separator) {
    int before = problems.count();
    Set<String> seen = new HashSet<>();
    List<String> columns = new ArrayList<>(header);
    while (!columns.isEmpty() && columns.get(columns.size() - 1).isEmpty()) {
      columns.remove(columns.size() - 1);
    }
    for (String column : columns) {
      if (!schema.names().contains(column)) {
        refuse(
            column.isEmpty() ? "a column without a name" : "a column " + Problem.quote(column),
            "only known columns",
            hint(column));
      } else if (!seen.add(column)) {
        refuse("a second column " + column, "each column once", "");
      }
    }
    for (TableSchema.Field field : schema.fields()) {
      if (field.isRequired() && !seen.contains(field.name())) {
        refuse("no column " + field.name(), "a column " + field.name(), "");
      }
    }
    return problems.count() == before
        ? Optional.of(new RowReader(schema, columns, separator, problems))
        : Optional.empty();
  }

  private String hint(String column) {
    String near = Nearest.hint(column, schema.names());
    return near.isEmpty() ? "Known are " + String.join(", ", schema.names()) + "." : near;
  }

  private void refuse(String found, String expected, String hint) {
    problems.add(new Problem(where, found, expected, hint));
  }
}
