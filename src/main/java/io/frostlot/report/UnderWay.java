package io.frostlot.report;

import io.frostlot.storage.PlacedLot;
import java.util.List;

/** Deliveries to come of orders that were placed before. */
final class UnderWay implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    List<PlacedLot> placed = report.world().scenario().larder().placed();
    if (placed.isEmpty()) {
      return;
    }
    page.heading("On its way already");
    for (PlacedLot lot : placed) {
      page.point(
          "%s %s (%s), arrives %s."
              .formatted(
                  lot.pieces(),
                  report.names().of(lot.item()),
                  lot.id(),
                  Wording.arrival(lot.arrivesEarliest(), lot.arrivesLatest())));
    }
  }
}
