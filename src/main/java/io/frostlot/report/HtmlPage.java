package io.frostlot.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A page as one HTML document, to read on a screen of any width and to print; it needs nothing from
 * elsewhere, runs nothing, and is well-formed XML too.
 */
final class HtmlPage implements Page {
  private static final String MAIN = "main";
  private static final String SECTION = "section";
  private static final String ENTRY = "div";
  private static final Set<String> HOLD_BLOCKS = Set.of(MAIN, SECTION, ENTRY);

  /**
   * What is not ended yet.
   *
   * @param end with which it will be
   */
  private record Open(String name, String end) {}

  private final StringBuilder html = new StringBuilder();
  private final Deque<Open> open = new ArrayDeque<>();
  private String title = "";
  private String foot = "";

  HtmlPage() {
    begin(MAIN, "", "");
  }

  /** The document of what is written to such a page. */
  static String of(Consumer<Page> writing) {
    Page page = new HtmlPage();
    writing.accept(page);
    return page.toString();
  }

  @Override
  public void title(String title) {
    this.title = title;
    element("h1", title);
  }

  @Override
  public void heading(String heading) {
    endDownTo(Set.of(MAIN));
    begin(SECTION, "", "");
    element("h2", heading);
  }

  @Override
  public void sheet(String heading) {
    endDownTo(Set.of(MAIN));
    String atFoot = foot.isEmpty() ? "" : "<p class=\"foot\">" + HtmlText.escaped(foot) + "</p>\n";
    begin(SECTION, " class=\"sheet\"", atFoot);
    element("h2", heading);
  }

  @Override
  public void foot(String sentence) {
    foot = sentence;
  }

  @Override
  public void entry(String name) {
    endDownTo(Set.of(MAIN, SECTION));
    begin(ENTRY, " class=\"entry\"", "");
    element("h3", name);
  }

  @Override
  public void gap() {
    endDownTo(HOLD_BLOCKS);
  }

  @Override
  public void say(String sentence) {
    gap();
    element("p", sentence);
  }

  @Override
  public void point(String sentence) {
    if (open.stream().noneMatch(it -> it.name().equals("ul"))) {
      gap();
      begin("ul", "", "");
    }
    endDownTo(Set.of("ul"));
    begin("li", "", "");
    html.append(HtmlText.escaped(sentence));
  }

  @Override
  public void fact(String label, String sentence) {
    pair(" class=\"facts\"", label, sentence);
  }

  @Override
  public void detail(String label, String sentence) {
    pair(" class=\"details\"", label + ":", sentence);
  }

  /** Within a point, if that is what comes before. */
  private void pair(String more, String label, String sentence) {
    if (!isIn("dl")) {
      if (!isIn("li")) {
        gap();
      }
      begin("dl", more, "");
    }
    html.append("<div>");
    element("dt", label);
    element("dd", sentence);
    html.append("</div>\n");
  }

  @Override
  public void amount(String label, String amount) {
    amount("", label, amount);
  }

  @Override
  public void total(String label, String amount) {
    amount(" class=\"total\"", label, amount);
  }

  private void amount(String more, String label, String amount) {
    if (!isIn("tbody")) {
      gap();
      begin("table", " class=\"amounts\"", "");
      begin("tbody", "", "");
    }
    html.append(
        "<tr%s><th scope=\"row\">%s</th><td class=\"number\">%s</td></tr>\n"
            .formatted(more, HtmlText.escaped(label), HtmlText.escaped(amount)));
  }

  @Override
  public void table(Table table) {
    gap();
    html.append(new HtmlTable(table).html());
  }

  @Override
  public void sign(String label) {
    endDownTo(Set.of(MAIN, SECTION));
    html.append("<p class=\"sign\">").append(HtmlText.escaped(label)).append(": ");
    html.append("<span>date</span> <span>signature</span></p>\n");
  }

  private boolean isIn(String name) {
    return open.element().name().equals(name);
  }

  private void element(String name, String text) {
    html.append("<%1$s>%2$s</%1$s>\n".formatted(name, HtmlText.escaped(text)));
  }

  /**
   * Begins an element.
   *
   * @param atEnd what stands at its end
   */
  private void begin(String name, String attributes, String atEnd) {
    html.append('<').append(name).append(attributes).append('>');
    html.append(name.equals("li") ? "" : "\n");
    open.push(new Open(name, atEnd + "</" + name + ">\n"));
  }

  /** Ends what is within the nearest of these. */
  private void endDownTo(Set<String> names) {
    while (!names.contains(open.element().name())) {
      html.append(open.pop().end());
    }
  }

  @Override
  public String toString() {
    List<String> ends = new ArrayList<>();
    open.forEach(it -> ends.add(it.end()));
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        %s%s</body>
        </html>
        """
        .formatted(HtmlText.escaped(title), HtmlStyle.CSS, html, String.join("", ends));
  }
}
