package io.frostlot.report;

import java.util.List;
import java.util.stream.IntStream;

/** A table as HTML; its first column heads the rows, unless numbers stand in it. */
final class HtmlTable {
  private static final int MOST_ROWS_IN_ONE_PIECE = 12;
  private final Table table;
  private final List<Table.Row> rows;

  /** Those in which something stands, but for what heads a group. */
  private final List<Integer> columns;

  HtmlTable(Table table) {
    this.table = table;
    rows = table.rows();
    columns = IntStream.range(0, table.columns().size()).filter(this::isUsed).boxed().toList();
  }

  private boolean isUsed(int column) {
    boolean headsGroups = table.isGrouped() && column == 0;
    boolean hasCells =
        rows.stream()
            .filter(row -> row.rank() != Table.Rank.ACROSS)
            .anyMatch(row -> !html(row.cells().get(column)).isEmpty());
    return !headsGroups && (hasCells || !table.columns().get(column).heading().isEmpty());
  }

  String html() {
    StringBuilder html = new StringBuilder("<div class=\"wide\"><table");
    html.append(rows.size() > MOST_ROWS_IN_ONE_PIECE ? ">\n" : " class=\"whole\">\n");
    if (table.hasHeadings()) {
      html.append("<thead><tr>");
      columns.forEach(column -> html.append(heading(table.columns().get(column))));
      html.append("</tr></thead>\n");
    }
    html.append("<tbody>\n");
    for (int r = 0; r < rows.size(); r++) {
      Table.Row row = rows.get(r);
      boolean across = row.rank() == Table.Rank.ACROSS;
      boolean beginsGroup = table.isGrouped() && !table.beginsAsAbove(r);
      if (across || beginsGroup) {
        html.append(r > 0 ? "</tbody>\n<tbody>\n" : "").append(across(row));
      }
      html.append(across ? "" : row(row));
    }
    return html.append("</tbody>\n</table></div>\n").toString();
  }

  /** A heading that says nothing is none. */
  private static String heading(Table.Column column) {
    return column.heading().isEmpty()
        ? "<td%s></td>".formatted(side(column))
        : "<th scope=\"col\"%s>%s</th>".formatted(side(column), HtmlText.escaped(column.heading()));
  }

  private static String side(Table.Column column) {
    return column.side() == Table.Side.RIGHT ? " class=\"number\"" : "";
  }

  /** What the rows below have in common. */
  private String across(Table.Row row) {
    return "<tr class=\"across\"><th scope=\"rowgroup\" colspan=\"%d\">%s</th></tr>\n"
        .formatted(columns.size(), html(row.cells().get(0)));
  }

  private String row(Table.Row row) {
    boolean under = table.isGrouped() || row.rank() == Table.Rank.UNDER;
    StringBuilder html = new StringBuilder(under ? "<tr class=\"under\">" : "<tr>");
    for (int c : columns) {
      Table.Column column = table.columns().get(c);
      boolean heads = c == columns.get(0) && column.side() == Table.Side.LEFT;
      String name = heads ? "th" : "td";
      html.append('<').append(name).append(heads ? " scope=\"row\"" : side(column));
      html.append('>').append(html(row.cells().get(c))).append("</").append(name).append('>');
    }
    return html.append("</tr>\n").toString();
  }

  private static String html(Table.Cell cell) {
    if (cell instanceof Table.Bar bar) {
      return "<span class=\"bar\"><i style=\"width:%d%%\"></i></span>\u00a0%s"
          .formatted(
              Math.round(100 * Math.max(0, Math.min(1, bar.share()))),
              Wording.percent(bar.share()));
    }
    return HtmlText.escaped(((Table.Words) cell).text().strip());
  }
}
