package io.frostlot.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** A page of plain text; nothing on it is wider than the page unless one word is. */
final class TextPage implements Page {
  private static final int LEAST = 72;
  private static final int MOST = 120;
  private static final int WIDEST_PROSE = 96;
  private static final int WIDEST_AMOUNTS = 72;
  private static final String LONG_MARK = "    ";
  private static final String RULE = "_".repeat(30);
  private static final String UNDER_HEADING = " ".repeat(2);
  private static final String UNDER_ENTRY = " ".repeat(4);
  private static final String UNDER_POINT = " ".repeat(6);
  private final StringBuilder text = new StringBuilder();
  private final int width;
  private String indent = UNDER_HEADING;

  /**
   * A page.
   *
   * @param width in characters; 72 to 120 are used
   */
  TextPage(int width) {
    this.width = Math.max(LEAST, Math.min(MOST, width));
  }

  /** What is written to such a page. */
  static String of(int width, Consumer<Page> writing) {
    Page page = new TextPage(width);
    writing.accept(page);
    return page.toString();
  }

  @Override
  public void title(String title) {
    text.append(title)
        .append('\n')
        .append("=".repeat(Math.min(width, title.length())))
        .append('\n');
  }

  @Override
  public void heading(String heading) {
    text.append('\n').append(heading.toUpperCase(Locale.ROOT)).append('\n');
    indent = UNDER_HEADING;
  }

  /** The letter is one piece. */
  @Override
  public void sheet(String heading) {
    heading(heading);
  }

  /** Said in full at its end. */
  @Override
  public void foot(String sentence) {}

  @Override
  public void entry(String name) {
    gap();
    say(name);
    indent = UNDER_ENTRY;
  }

  @Override
  public void gap() {
    text.append('\n');
  }

  @Override
  public void say(String sentence) {
    hang("  ", sentence);
  }

  @Override
  public void point(String sentence) {
    hang("  - ", sentence);
    indent = UNDER_POINT;
  }

  @Override
  public void fact(String label, String sentence) {
    hang("  %-5s  ".formatted(label), sentence);
  }

  @Override
  public void detail(String label, String sentence) {
    hang(indent + label + ": ", sentence);
  }

  /** Text whose further lines stand under the end of the mark, unless that is too long. */
  private void hang(String mark, String sentence) {
    int room = Math.min(width, WIDEST_PROSE);
    if (mark.length() > room / 2) {
      hang(LONG_MARK, mark.strip() + " " + sentence);
      return;
    }
    String start = mark;
    for (String line : wrap(sentence, room - mark.length())) {
      line(start + line);
      start = " ".repeat(mark.length());
    }
  }

  /** A label and an amount at the right, with dots between. */
  @Override
  public void amount(String label, String amount) {
    int room = Math.min(width, WIDEST_AMOUNTS) - indent.length() - amount.length() - 2;
    List<String> lines = wrap(label, room - 3);
    for (String line : lines.subList(0, lines.size() - 1)) {
      line(indent + line);
    }
    String last = lines.get(lines.size() - 1);
    String dots = ".".repeat(Math.max(0, room - last.length()));
    line(indent + last + " " + dots + " " + amount);
  }

  @Override
  public void total(String label, String amount) {
    amount(label, amount);
  }

  @Override
  public void table(Table table) {
    new TextTable(table).lines(width - 2).forEach(line -> line("  " + line));
  }

  @Override
  public void sign(String label) {
    gap();
    say(label + ": " + RULE);
  }

  private void line(String line) {
    text.append(line.replace(Wording.NO_BREAK, ' ').stripTrailing()).append('\n');
  }

  /** Breaks between words; a word longer than the line is cut. */
  static List<String> wrap(String sentence, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : sentence.split(" ", -1)) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
