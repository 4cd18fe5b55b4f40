package io.frostlot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Rows under headings, of which all may be empty; what a row is about stands in its first cell. */
final class Table {
  private final List<Column> columns;
  private final List<Row> rows = new ArrayList<>();
  private boolean grouped;

  /** How a column stands. */
  enum Side {
    LEFT,
    RIGHT
  }

  record Column(String heading, Side side) {}

  /** What stands where a row and a column meet. */
  sealed interface Cell {}

  record Words(String text) implements Cell {}

  /** How full something is; 1 is full. */
  record Bar(double share) implements Cell {}

  /** How a row stands to those above it. */
  enum Rank {
    PLAIN,
    /** It says more of what the row above is about. */
    UNDER,
    /** One text across all columns, over the rows below. */
    ACROSS
  }

  record Row(Rank rank, List<Cell> cells) {
    Row {
      cells = List.copyOf(cells);
    }
  }

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

  /** Rows that begin alike are a group, which says so once; the first column has no heading. */
  Table grouped() {
    if (!columns.get(0).heading().isEmpty()) {
      throw new IllegalArgumentException(columns.get(0).heading() + ", expected no heading");
    }
    grouped = true;
    return this;
  }

  Table row(List<String> cells) {
    return row(Rank.PLAIN, words(cells));
  }

  Table row(String... cells) {
    return row(List.of(cells));
  }

  Table under(List<String> cells) {
    return row(Rank.UNDER, words(cells));
  }

  /** A line across all columns. */
  Table line(String text) {
    rows.add(new Row(Rank.ACROSS, words(List.of(text))));
    return this;
  }

  Table bars(String label, List<Double> shares) {
    return row(
        Rank.PLAIN,
        Stream.concat(Stream.of(new Words(label)), shares.stream().map(Bar::new)).toList());
  }

  private static List<Cell> words(List<String> cells) {
    return cells.stream().<Cell>map(Words::new).toList();
  }

  private Table row(Rank rank, List<? extends Cell> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(cells.size() + " cells in " + columns.size() + " columns");
    }
    rows.add(new Row(rank, List.copyOf(cells)));
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  List<Column> columns() {
    return columns;
  }

  List<Row> rows() {
    return List.copyOf(rows);
  }

  boolean isGrouped() {
    return grouped;
  }

  boolean hasHeadings() {
    return columns.stream().anyMatch(column -> !column.heading().isEmpty());
  }

  /** In a grouped table: does the row begin as the one above it? */
  boolean beginsAsAbove(int row) {
    return grouped
        && row > 0
        && rows.get(row).cells().get(0).equals(rows.get(row - 1).cells().get(0));
  }
}
