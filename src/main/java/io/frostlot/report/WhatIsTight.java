package io.frostlot.report;

import io.frostlot.plan.Books;
import java.util.Comparator;
import java.util.List;

/** The limits that are used most. */
final class WhatIsTight implements Sections.Section {
  private static final double WORTH_SHOWING = 0.7;
  private static final int MOST_SHOWN = 6;

  @Override
  public void write(PlanReport report, Page page) {
    List<Books.Use> tight =
        report.books().uses().stream()
            .filter(use -> use.limit() > 0 && use.used() >= WORTH_SHOWING * use.limit())
            .sorted(Comparator.comparingDouble((Books.Use use) -> -use.used() / use.limit()))
            .limit(MOST_SHOWN)
            .toList();
    if (tight.isEmpty()) {
      return;
    }
    page.heading("What is tight");
    Table table = Table.of(">full", ">used", ">limit", "rule", "where");
    tight.forEach(
        use ->
            table.row(
                Wording.percent(use.used() / use.limit()),
                Wording.decimal(use.used()),
                Wording.decimal(use.limit()),
                Wording.rule(use.rule()),
                use.where()));
    page.table(table);
  }
}
