package io.frostlot.report;

/** Text as it may stand in HTML and in XML. */
final class HtmlText {
  private static final int REPLACEMENT = 0xfffd;

  private HtmlText() {}

  /**
   * With references for what would be read as markup; what no document may hold, such as controls,
   * is replaced by a sign that says so.
   */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isText(point) ? point : REPLACEMENT);
              }
            });
    return escaped.toString();
  }

  /**
   * The HTML Living Standard, phrasing content, on what text consists of: no controls but white
   * space, no noncharacters, no lone surrogates. XML 1.0 (Char) takes all that is left.
   */
  private static boolean isText(int point) {
    boolean control = Character.isISOControl(point) && point != '\n' && point != '\t';
    boolean noncharacter = (point & 0xfffe) == 0xfffe || (point >= 0xfdd0 && point <= 0xfdef);
    return !control && !noncharacter && Character.getType(point) != Character.SURROGATE;
  }
}
