package io.frostlot.files;

/**
 * A place in an input file.
 *
 * @param file as the keeper knows it, such as {@code animals.csv} or {@code hillside/prices.csv}
 * @param line from 1; 0 for the file as a whole
 * @param column name of a CSV column, or column number and path in a JSON file; empty for the line
 */
public record Where(String file, int line, String column) {
  static Where file(String file) {
    return new Where(file, 0, "");
  }

  @Override
  public String toString() {
    return file
        + (line > 0 ? " line " + line : "")
        + (column.isEmpty() ? "" : (line > 0 ? ", column " : " column ") + column);
  }
}
