package io.frostlot.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A page of plain text that grows downwards; nothing on it is wider than the page unless one word
 * is.
 */
final class Page {
  private static final int LEAST = 72;
  private static final int MOST = 120;
  private static final int WIDEST_PROSE = 96;
  private static final int WIDEST_AMOUNTS = 72;
  private static final String LONG_MARK = "    ";
  private final StringBuilder text = new StringBuilder();
  private final int width;

  /**
   * A page.
   *
   * @param width in characters; 72 to 120 are used
   */
  Page(int width) {
    this.width = Math.max(LEAST, Math.min(MOST, width));
  }

  /** A title across the page. */
  void title(String title) {
    text.append(title)
        .append('\n')
        .append("=".repeat(Math.min(width, title.length())))
        .append('\n');
  }

  void heading(String heading) {
    text.append('\n').append(heading.toUpperCase(java.util.Locale.ROOT)).append('\n');
  }

  /** Of something that may have been told before. */
  void heading(String heading, boolean again) {
    heading(again ? heading + " (after a longer look)" : heading);
  }

  void gap() {
    text.append('\n');
  }

  void say(String sentence) {
    hang("  ", sentence);
  }

  void point(String sentence) {
    hang("  - ", sentence);
  }

  /** Text whose further lines stand under the end of the mark, unless that is too long. */
  void hang(String mark, String sentence) {
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
  void amount(String indent, String label, String amount) {
    int room = Math.min(width, WIDEST_AMOUNTS) - indent.length() - amount.length() - 2;
    List<String> lines = wrap(label, room - 3);
    for (String line : lines.subList(0, lines.size() - 1)) {
      line(indent + line);
    }
    String last = lines.get(lines.size() - 1);
    String dots = ".".repeat(Math.max(0, room - last.length()));
    line(indent + last + " " + dots + " " + amount);
  }

  void table(Table table) {
    table.lines(width - 2).forEach(line -> line("  " + line));
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
