package io.frostlot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A table as lines of text; where it is too narrow the widest text columns are wrapped. */
final class TextTable {
  private static final int NARROWEST = 8;
  private static final int BAR = 10;
  private static final int WIDEST_PERCENT = 7;
  private static final String UNDER = Wording.NO_BREAK + " ";
  private final List<Table.Column> columns;
  private final boolean hasHeadings;
  private final List<List<String>> rows = new ArrayList<>();

  TextTable(Table table) {
    columns = table.columns();
    hasHeadings = table.hasHeadings();
    for (int r = 0; r < table.rows().size(); r++) {
      Table.Row row = table.rows().get(r);
      List<String> cells = new ArrayList<>(row.cells().stream().map(TextTable::text).toList());
      if (table.beginsAsAbove(r)) {
        cells.set(0, "");
      }
      if (row.rank() == Table.Rank.UNDER) {
        cells.set(0, UNDER + cells.get(0));
      }
      rows.add(cells);
    }
  }

  private static String text(Table.Cell cell) {
    return cell instanceof Table.Bar bar ? bar(bar.share()) : ((Table.Words) cell).text();
  }

  /** Such as "#######... 66 %": a sign for each tenth that is begun, then the percent. */
  private static String bar(double share) {
    int signs = (int) Math.min(BAR, Math.ceil(BAR * share));
    String percent = Wording.percent(share);
    return ("#".repeat(signs)
            + ".".repeat(BAR - signs)
            + " ".repeat(WIDEST_PERCENT - percent.length())
            + percent)
        .replace(' ', Wording.NO_BREAK);
  }

  List<String> lines(int width) {
    int[] widths = widths(width);
    List<String> lines = new ArrayList<>();
    if (hasHeadings) {
      lines.addAll(line(columns.stream().map(Table.Column::heading).toList(), widths));
    }
    rows.forEach(
        row -> lines.addAll(isAcross(row) ? TextPage.wrap(row.get(0), width) : line(row, widths)));
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
        boolean mayShrink = columns.get(c).side() == Table.Side.LEFT && widths[c] > least[c];
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
      wrapped.add(TextPage.wrap(cells.get(c), Math.max(1, widths[c])));
    }
    int height = wrapped.stream().mapToInt(List::size).max().orElse(1);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String cell = i < wrapped.get(c).size() ? wrapped.get(c).get(i) : "";
        String space = " ".repeat(Math.max(0, widths[c] - cell.length()));
        line.append(c == 0 ? "" : "  ");
        line.append(columns.get(c).side() == Table.Side.RIGHT ? space + cell : cell + space);
      }
      lines.add(line.toString());
    }
    return lines;
  }
}
