package io.frostlot.files;

import io.frostlot.plan.Scenario;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads a scenario folder and the profiles of its suppliers. Whatever the bytes in it, the result
 * is a scenario or a list of problems; nothing is thrown.
 */
public final class ScenarioFolder {
  private final Path folder;
  private final List<Path> profiles;
  private final String profilesAsTyped;
  private final Problems problems = new Problems();

  private ScenarioFolder(Path folder, List<Path> profiles, String profilesAsTyped) {
    this.folder = folder.toAbsolutePath().normalize();
    this.profiles = profiles;
    this.profilesAsTyped = profilesAsTyped;
  }

  /**
   * Profiles are looked up in the scenario's own supplier-profiles, then in
   * ../../supplier-profiles.
   */
  public static Reading read(Path scenario) {
    Path folder = scenario.toAbsolutePath().normalize();
    Path shared = folder.resolve("../../supplier-profiles").normalize();
    List<Path> profiles = List.of(folder.resolve("supplier-profiles"), shared);
    return new ScenarioFolder(scenario, profiles, "supplier-profiles or ../../supplier-profiles")
        .read();
  }

  /** Profiles are looked up in a given folder only. */
  public static Reading read(Path scenario, Path profiles) {
    return new ScenarioFolder(scenario, List.of(profiles), profiles.toString()).read();
  }

  private Reading read() {
    Optional<Problem> another = FolderCheck.SCENARIO.problem(folder);
    if (another.isPresent()) {
      return new Reading.Refused(List.of(another.get()));
    }
    Tables tables = Tables.read(folder, problems);
    Optional<ScenarioFile> file = ScenarioFile.read(folder.resolve("scenario.json"), problems);
    List<Scenario> scenario = file.stream().flatMap(it -> scenario(it, tables).stream()).toList();
    return scenario.isEmpty()
        ? new Reading.Refused(problems.all())
        : new Reading.Accepted(
            scenario.get(0),
            warnings(file.orElseThrow(), scenario.get(0)),
            Digest.of(scenario.get(0)));
  }

  private Optional<Scenario> scenario(ScenarioFile file, Tables tables) {
    List<ProfileFile.Offer> offers = offers(file);
    Scenario.Collection collection = tables.collection(file);
    Scenario.Larder larder = tables.larder(file, offers);
    Optional<Period> planning = file.planning();
    if (!problems.isEmpty() || planning.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Scenario(
            file.root().text("name"),
            planning.get(),
            file.currency().orElseThrow(),
            collection,
            larder,
            offers.stream()
                .flatMap(offer -> offer.supplier().stream())
                .map(supplier -> file.root().yes("sortBags") ? sorted(supplier) : supplier)
                .toList(),
            file.away(),
            PolicyPart.read(file.root().object("policy"))));
  }

  private static Supplier sorted(Supplier supplier) {
    return supplier.withSheet(
        supplier
            .sheet()
            .withPacks(supplier.sheet().packs().stream().map(Pack::sortedAtHome).toList()));
  }

  private List<ProfileFile.Offer> offers(ScenarioFile file) {
    List<ProfileFile.Offer> offers = new ArrayList<>();
    for (Json.Text id : file.suppliers()) {
      Optional<Path> found = ProfileFile.find(id.value(), profiles);
      if (id.value().equals("stock")) {
        problems.add(
            new Problem(
                id.where(),
                id.shown(),
                "another folder name",
                "This one stands for prey in hand."));
      } else if (found.isPresent()) {
        offers.add(new ProfileFile(id.value(), file, problems).read(found.get()));
      } else {
        problems.add(
            new Problem(id.where(), id.shown(), "a folder of that name in " + profilesAsTyped, ""));
      }
    }
    return offers;
  }

  private List<String> warnings(ScenarioFile file, Scenario scenario) {
    int mostDays = file.root().integer("oldPricesAfterDays");
    Stream<String> old =
        scenario.suppliers().stream()
            .flatMap(
                (Supplier supplier) ->
                    ProfileFile.oldPrices(supplier, scenario.planning().from(), mostDays).stream());
    Stream<String> past =
        StockFile.pastUseBy(scenario.larder().stock(), scenario.planning().from()).stream();
    return Stream.of(old, past, problems.toLookAt().stream()).flatMap(s -> s).toList();
  }
}
