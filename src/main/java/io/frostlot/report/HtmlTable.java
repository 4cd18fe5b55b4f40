package io.frostlot.report;

import java.util.List;
import java.util.stream.IntStream;

/** A table as HTML; its first column heads the rows, unless numbers stand in it. */
final class HtmlTable {
  private static final String UNDER = " class=\"under\">";
  private static final int MOST_ROWS_IN_ONE_PIECE = 12;
  private final Table table;
  private final List<Table.Row> rows;

  /** Those in which something stands. */
  private final List<Integer> columns;

  HtmlTable(Table table) {
    this.table = table;
    rows = table.rows();
    columns = IntStream.range(0, table.columns().size()).filter(this::isUsed).boxed().toList();
  }

  private boolean isUsed(int column) {
    return !table.columns().get(column).heading().isEmpty()
        || rows.stream()
            .filter(row -> row.rank() != Table.Rank.ACROSS)
            .anyMatch(row -> !html(row.cells().get(column)).isEmpty());
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
      boolean across = rows.get(r).rank() == Table.Rank.ACROSS;
      html.append(across && r > 0 ? "</tbody>\n<tbody>\n" : "");
      html.append(across ? across(rows.get(r)) : row(r)).append('\n');
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

  private String across(Table.Row row) {
    return "<tr class=\"across\"><th scope=\"rowgroup\" colspan=\"%d\">%s</th></tr>"
        .formatted(columns.size(), html(row.cells().get(0)));
  }

  private String row(int number) {
    Table.Row row = rows.get(number);
    boolean again = table.beginsAsAbove(number);
    StringBuilder html = new StringBuilder("<tr");
    html.append(again ? " class=\"again\">" : row.rank() == Table.Rank.UNDER ? UNDER : ">");
    for (int c : again ? columns.subList(1, columns.size()) : columns) {
      Table.Column column = table.columns().get(c);
      boolean heads = c == 0 && column.side() == Table.Side.LEFT;
      String name = heads ? "th" : "td";
      html.append('<').append(name).append(heads ? " scope=\"row\"" + span(number) : side(column));
      html.append('>').append(html(row.cells().get(c))).append("</").append(name).append('>');
    }
    return html.append("</tr>").toString();
  }

  /** Over the rows below that begin alike. */
  private String span(int number) {
    int count = 1;
    while (number + count < rows.size() && table.beginsAsAbove(number + count)) {
      count++;
    }
    return count > 1 ? " rowspan=\"" + count + "\"" : "";
  }

  private static String html(Table.Cell cell) {
    if (cell instanceof Table.Bar bar) {
      return "<span class=\"bar\"><i style=\"width:%d%%\"></i></span> %s"
          .formatted(
              Math.round(100 * Math.max(0, Math.min(1, bar.share()))),
              Wording.percent(bar.share()));
    }
    return HtmlText.escaped(((Table.Words) cell).text().strip());
  }
}
