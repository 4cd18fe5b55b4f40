package io.frostlot.files;

import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import java.nio.file.Path;
import java.util.List;

/** The CSV files of a scenario folder. */
record Tables(
    Table animals,
    Table events,
    Table needs,
    Table freezers,
    Table freezerLimits,
    Table stock,
    Table placed) {

  static Tables read(Path folder, Problems problems) {
    Tables tables =
        new Tables(
            table("animals", problems).readIfThere(folder.resolve("animals.csv")),
            table("events", problems).readIfThere(folder.resolve("events.csv")),
            table("needs", problems).readIfThere(folder.resolve("needs.csv")),
            table("freezers", problems).read(folder.resolve("freezers.csv")),
            table("freezer-limits", problems).readIfThere(folder.resolve("freezer-limits.csv")),
            table("stock", problems).readIfThere(folder.resolve("stock.csv")),
            table("placed", problems).readIfThere(folder.resolve("placed.csv")));
    if (tables.animals.isEmpty() && tables.needs.isEmpty()) {
      problems.add(
          new Problem(
              Where.file("animals.csv"),
              "no animals here and no needs in needs.csv",
              "at least one of either",
              ""));
    }
    if (tables.freezers.isEmpty()) {
      problems.add(new Problem(Where.file("freezers.csv"), "no freezer", "at least one", ""));
    }
    return tables;
  }

  private static TableReader table(String name, Problems problems) {
    TableSchema schema = TableSchema.named(name);
    return new TableReader(schema, schema.file(), problems);
  }

  Scenario.Collection collection(ScenarioFile scenario) {
    EventsFile happening = EventsFile.read(events, animals.texts("name"), animals.whole());
    List<Animal> eaters =
        AnimalsFile.read(animals, scenario).stream().map(happening::with).toList();
    List<Need> rows = new NeedsFile(scenario, animals.texts("name")).read(needs);
    return new Scenario.Collection(eaters, rows);
  }

  Scenario.Larder larder(ScenarioFile scenario, List<ProfileFile.Offer> offers) {
    boolean besideFood =
        scenario.sound("policy") && scenario.root().object("policy").yes("preySealedFromFood");
    List<Freezer> all =
        FreezersFile.read(freezers, FreezerLimitsFile.read(freezerLimits, freezers), besideFood);
    LotPrey prey = new LotPrey(scenario, offers);
    boolean known = freezers.whole() && !all.isEmpty() && freezers.rows().size() == all.size();
    List<StockLot> inHand = new StockFile(scenario, prey, all, known).read(stock);
    boolean nowhere = known && all.stream().noneMatch(Freezer::inUse);
    List<PlacedLot> coming =
        new PlacedFile(scenario, prey, stock.texts("lot"), nowhere).read(placed);
    return new Scenario.Larder(all, inHand, coming);
  }
}
