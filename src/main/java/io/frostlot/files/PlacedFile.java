package io.frostlot.files;

import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** {@code placed.csv}. */
final class PlacedFile {
  private static final long MOST_PIECES = 1_000_000;
  private final ScenarioFile scenario;
  private final LotPrey prey;
  private final Set<String> lotsInHand;
  private final boolean nowhere;

  /**
   * For one scenario.
   *
   * @param nowhere may new prey be put into none of the freezers?
   */
  PlacedFile(ScenarioFile scenario, LotPrey prey, Set<String> lotsInHand, boolean nowhere) {
    this.scenario = scenario;
    this.prey = prey;
    this.lotsInHand = lotsInHand;
    this.nowhere = nowhere;
  }

  /** The lots that are right. */
  List<PlacedLot> read(Table table) {
    return table.rows().stream().flatMap(row -> lot(row).stream()).toList();
  }

  private Optional<PlacedLot> lot(Row row) {
    Optional<Item> item = prey.of(row);
    if (lotsInHand.contains(row.text("lot"))) {
      row.wrong("lot", "a lot that is not in stock.csv too", "");
    }
    if (nowhere) {
      row.wrong(
          "lot",
          Problem.quote(row.text("lot")) + ", which may be put into none of the freezers",
          "one in freezers.csv that is in use and holds no food, or where prey is sealed from it"
              + " policy.preySealedFromFood in scenario.json",
          "");
    }
    LocalDate earliest = row.date("arrives_earliest");
    LocalDate latest = row.dateOr("arrives_latest", earliest);
    scenario
        .planning()
        .filter(planning -> earliest.isBefore(planning.from()))
        .ifPresent(
            planning ->
                row.wrong(
                    "arrives_earliest",
                    "a day from " + planning.from() + " on",
                    "What has arrived stands in stock.csv."));
    if (latest.isBefore(earliest)) {
      row.wrong("arrives_latest", "a day from " + earliest + " on", "");
    }
    int pieces = pieces(row);
    return item.isPresent() && row.isSound()
        ? Optional.of(new PlacedLot(row.text("lot"), item.get(), pieces, earliest, latest))
        : Optional.empty();
  }

  private static int pieces(Row row) {
    if (!row.exactlyOne("pieces", "packs") || !row.together("pack_count", "packs")) {
      return 0;
    }
    if (row.has("pieces")) {
      return row.integer("pieces");
    }
    long pieces = (long) row.integer("pack_count") * row.integer("packs");
    if (pieces > MOST_PIECES) {
      row.wrong("packs", pieces + " pieces", "at most " + MOST_PIECES + " pieces", "");
    }
    return (int) Math.min(pieces, MOST_PIECES);
  }
}
