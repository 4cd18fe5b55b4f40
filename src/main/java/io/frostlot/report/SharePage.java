package io.frostlot.report;

import io.frostlot.plan.Shared;
import java.util.List;

/**
 * The letter about a shared plan as one HTML page to print: each member's sheet on paper of its
 * own.
 */
public final class SharePage {
  private static final String STYLE =
      "body{font-family:sans-serif;margin:2em}pre{font-size:10pt;line-height:1.35}"
          + "section{break-before:page}section:first-of-type{break-before:auto}";

  private SharePage() {}

  /** A whole document that needs nothing from elsewhere. */
  public static String of(Shared shared, List<String> warnings) {
    StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n");
    page.append("<meta charset=\"utf-8\">\n<title>");
    page.append(escaped(shared.group().name())).append("</title>\n<style>").append(STYLE);
    page.append("</style>\n</head>\n<body>\n<section><pre>\n");
    for (String line : new ShareReport(shared, warnings).text(96).split("\n", -1)) {
      boolean newSheet = line.startsWith("SHEET OF ") || line.startsWith("WHEN A BOX COMES");
      page.append(newSheet ? "</pre></section>\n<section><pre>\n" : "");
      page.append(escaped(line)).append('\n');
    }
    return page.append("</pre></section>\n</body>\n</html>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
