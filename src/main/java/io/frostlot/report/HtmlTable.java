package io.frostlot.report;

/** A table as HTML; its first column heads the rows, unless numbers stand in it. */
record HtmlTable(Table table) {

  String html() {
    StringBuilder html = new StringBuilder("<div class=\"wide\"><table>\n");
    if (table.hasHeadings()) {
      html.append("<thead><tr>");
      table.columns().forEach(column -> html.append(heading(column)));
      html.append("</tr></thead>\n");
    }
    html.append("<tbody>\n");
    for (int r = 0; r < table.rows().size(); r++) {
      Table.Row row = table.rows().get(r);
      boolean across = row.rank() == Table.Rank.ACROSS;
      html.append(across && r > 0 ? "</tbody>\n<tbody>\n" : "");
      html.append(across ? across(row) : row(row, r)).append('\n');
    }
    return html.append("</tbody>\n</table></div>\n").toString();
  }

  /** A heading that says nothing is none. */
  private static String heading(Table.Column column) {
    return column.heading().isEmpty()
        ? "<td></td>"
        : "<th scope=\"col\"%s>%s</th>".formatted(side(column), HtmlText.escaped(column.heading()));
  }

  private static String side(Table.Column column) {
    return column.side() == Table.Side.RIGHT ? " class=\"number\"" : "";
  }

  private String across(Table.Row row) {
    return "<tr class=\"across\"><th scope=\"rowgroup\" colspan=\"%d\">%s</th></tr>"
        .formatted(table.columns().size(), html(row.cells().get(0)));
  }

  private String row(Table.Row row, int number) {
    StringBuilder html =
        new StringBuilder(row.rank() == Table.Rank.UNDER ? "<tr class=\"under\">" : "<tr>");
    for (int c = table.beginsAsAbove(number) ? 1 : 0; c < row.cells().size(); c++) {
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
    int rows = 1;
    while (number + rows < table.rows().size() && table.beginsAsAbove(number + rows)) {
      rows++;
    }
    return rows > 1 ? " rowspan=\"" + rows + "\"" : "";
  }

  private static String html(Table.Cell cell) {
    if (cell instanceof Table.Bar bar) {
      return "<span class=\"bar\"><i style=\"width:%.0f%%\"></i></span> %s"
          .formatted(100 * Math.max(0, Math.min(1, bar.share())), Wording.percent(bar.share()));
    }
    return HtmlText.escaped(((Table.Words) cell).text().strip());
  }
}
