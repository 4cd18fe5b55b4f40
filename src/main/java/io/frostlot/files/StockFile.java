package io.frostlot.files;

import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code stock.csv}. */
final class StockFile {
  private final ScenarioFile scenario;
  private final LotPrey prey;
  private final List<Freezer> freezers;
  private final boolean allFreezersKnown;

  StockFile(ScenarioFile scenario, LotPrey prey, List<Freezer> freezers, boolean allFreezersKnown) {
    this.scenario = scenario;
    this.prey = prey;
    this.freezers = freezers;
    this.allFreezersKnown = allFreezersKnown;
  }

  /** The lots that are right. */
  List<StockLot> read(Table table) {
    return table.rows().stream().flatMap(row -> lot(row).stream()).toList();
  }

  private Optional<StockLot> lot(Row row) {
    Optional<Item> item = prey.of(row);
    LocalDate arrived = row.date("arrived");
    scenario
        .planning()
        .filter(planning -> arrived.isAfter(planning.from()))
        .ifPresent(
            planning ->
                row.wrong(
                    "arrived",
                    "a day up to the first planning day, " + planning.from(),
                    "What is still to come stands in placed.csv."));
    if (row.has("use_by") && row.date("use_by").isBefore(arrived)) {
      row.wrong("use_by", "a day from " + arrived + " on", "");
    }
    if (row.has("best_before") && row.date("best_before").isBefore(arrived)) {
      row.wrong("best_before", "a day from " + arrived + " on", "");
    }
    Optional<Freezer> freezer = freezer(row);
    if (row.has("best_before") && freezer.isPresent() && item.isPresent()) {
      LocalDate useBy = row.dateOr("use_by", freezer.get().useBy(item.get(), arrived));
      if (row.date("best_before").isAfter(useBy)) {
        row.wrong("best_before", "a day up to its use-by, " + useBy, "");
      }
    }
    return item.isPresent() && freezer.isPresent() && row.isSound()
        ? Optional.of(
            new StockLot(
                row.text("lot"),
                item.get(),
                row.integer("pieces"),
                row.text("freezer"),
                arrived,
                keeps(row, freezer.get().keeps(item.get(), arrived))))
        : Optional.empty();
  }

  /** As typed, else as in its freezer; where only a use-by is typed, no later than that. */
  private static Keeps keeps(Row row, Keeps usual) {
    LocalDate useBy = row.dateOr("use_by", usual.useBy());
    LocalDate best = row.dateOr("best_before", usual.bestBefore());
    return new Keeps(best.isAfter(useBy) ? useBy : best, useBy);
  }

  private Optional<Freezer> freezer(Row row) {
    String name = row.text("freezer");
    Optional<Freezer> freezer = freezers.stream().filter(it -> it.name().equals(name)).findFirst();
    if (freezer.isEmpty() && allFreezersKnown) {
      List<String> names = freezers.stream().map(Freezer::name).toList();
      row.wrong("freezer", "a freezer of freezers.csv", Nearest.hint(name, names));
    }
    return freezer;
  }

  /** A warning for each lot that is past its use-by when planning starts. */
  static List<String> pastUseBy(List<StockLot> stock, LocalDate from) {
    return stock.stream()
        .filter(lot -> lot.useBy().isBefore(from))
        .map(lot -> "stock.csv: lot " + lot.id() + " was to be used by " + lot.useBy() + ".")
        .toList();
  }
}
