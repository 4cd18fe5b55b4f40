package io.frostlot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rows under headings; where the page is too narrow the widest text columns are wrapped. */
final class Table {
  private static final int NARROWEST = 8;
  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();

  /** How a column stands. */
  enum Side {
    LEFT,
    RIGHT
  }

  record Column(String heading, Side side) {}

  private Table(List<Column> columns) {
    this.columns = columns;
  }

  /** Headings that begin with {@code >} stand right, with what is below them. */
  static Table of(String... headings) {
    return new Table(
        List.of(headings).stream()
            .map(
                h ->
                    h.startsWith(">")
                        ? new Column(h.substring(1), Side.RIGHT)
                        : new Column(h, Side.LEFT))
            .toList());
  }

  Table row(List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(cells.size() + " cells in " + columns.size() + " columns");
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  Table row(String... cells) {
    return row(List.of(cells));
  }

  /** A line across all columns. */
  Table line(String text) {
    rows.add(List.of(text));
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  List<String> lines(int width) {
    int[] widths = widths(width);
    List<String> lines = new ArrayList<>();
    if (columns.stream().anyMatch(column -> !column.heading().isEmpty())) {
      lines.addAll(line(columns.stream().map(Column::heading).toList(), widths));
    }
    rows.forEach(
        row -> lines.addAll(isAcross(row) ? Page.wrap(row.get(0), width) : line(row, widths)));
    return lines;
  }

  private boolean isAcross(List<String> row) {
    return row.size() < columns.size();
  }

  private Stream<String> cells(int column) {
    return rows.stream().filter(row -> !isAcross(row)).map(row -> row.get(column));
  }

  private int[] widths(int width) {
    int[] widths = IntStream.range(0, columns.size()).map(this::natural).toArray();
    int room = width - 2 * (columns.size() - 1);
    shrink(widths, room, IntStream.range(0, columns.size()).map(this::longestWord).toArray());
    shrink(widths, room, IntStream.range(0, columns.size()).map(c -> NARROWEST).toArray());
    return widths;
  }

  /** Takes from the widest text column, none below its least width, until all fit. */
  private void shrink(int[] widths, int room, int[] least) {
    while (IntStream.of(widths).sum() > room) {
      int widest = -1;
      for (int c = 0; c < widths.length; c++) {
        boolean mayShrink = columns.get(c).side() == Side.LEFT && widths[c] > least[c];
        if (mayShrink && (widest < 0 || widths[c] > widths[widest])) {
          widest = c;
        }
      }
      if (widest < 0) {
        return;
      }
      widths[widest]--;
    }
  }

  private int longestWord(int column) {
    return cells(column)
        .flatMap(cell -> Stream.of(cell.split(" ")))
        .mapToInt(String::length)
        .reduce(NARROWEST, Math::max);
  }

  private int natural(int column) {
    return cells(column)
        .mapToInt(String::length)
        .reduce(columns.get(column).heading().length(), Math::max);
  }

  private List<String> line(List<String> cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int c = 0; c < widths.length; c++) {
      wrapped.add(Page.wrap(cells.get(c), Math.max(1, widths[c])));
    }
    int height = wrapped.stream().mapToInt(List::size).max().orElse(1);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String cell = i < wrapped.get(c).size() ? wrapped.get(c).get(i) : "";
        String space = " ".repeat(Math.max(0, widths[c] - cell.length()));
        line.append(c == 0 ? "" : "  ");
        line.append(columns.get(c).side() == Side.RIGHT ? space + cell : cell + space);
      }
      lines.add(line.toString());
    }
    return lines;
  }
}
