package io.frostlot.report;

/** What was accepted but should be looked at. */
final class Warnings implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    if (!report.inputs().warnings().isEmpty()) {
      page.heading("Look at");
      report.inputs().warnings().forEach(page::point);
    }
  }
}
