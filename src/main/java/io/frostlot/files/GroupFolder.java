package io.frostlot.files;

import io.frostlot.plan.Agreement;
import io.frostlot.plan.Cutting;
import io.frostlot.plan.Group;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Waiting;
import io.frostlot.supply.Pack;
import io.frostlot.units.Litres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads a group folder: {@code group.json} and the members' scenario folders in it. Whatever the
 * bytes, the result is a group or a list of problems; nothing is thrown.
 */
public final class GroupFolder {
  private static final String FILE = "group.json";
  private final Path folder;
  private final Path profiles;
  private final Problems problems = new Problems();
  private final List<String> warnings = new ArrayList<>();
  private final Map<String, Scenario> scenarios = new LinkedHashMap<>();

  private GroupFolder(Path folder, Path profiles) {
    this.folder = folder.toAbsolutePath().normalize();
    this.profiles = profiles;
  }

  /**
   * Profiles are looked up in the group's own supplier-profiles, else in ../../supplier-profiles.
   */
  public static GroupReading read(Path group) {
    Path own = group.resolve("supplier-profiles");
    boolean isThere = Files.isDirectory(own);
    Path shared = group.toAbsolutePath().resolve("../../supplier-profiles").normalize();
    return new GroupFolder(group, isThere ? own : shared).read();
  }

  /** Profiles are looked up in a given folder only. */
  public static GroupReading read(Path group, Path profiles) {
    return new GroupFolder(group, profiles).read();
  }

  private GroupReading read() {
    Optional<Problem> another = FolderCheck.GROUP.problemOrMissing(folder);
    if (another.isPresent()) {
      return new GroupReading.Refused(List.of(another.get()));
    }
    Optional<JsonSchema.Checked> file =
        TextFile.read(folder.resolve(FILE), FILE, problems)
            .flatMap(text -> JsonText.parse(text, FILE, problems))
            .flatMap(json -> JsonSchema.named("schema/group.schema.json").check(json, problems));
    if (file.isEmpty() || !problems.isEmpty()) {
      return new GroupReading.Refused(problems.all());
    }
    Json.Obj json = file.get().document();
    json.objects("members").forEach(this::readScenario);
    List<Keeper> keepers = keepers(json);
    Agreement agreement = agreement(json);
    if (!problems.isEmpty()) {
      return new GroupReading.Refused(problems.all());
    }
    Json.Obj sharing = json.object("sharing");
    Group.Terms terms =
        new Group.Terms(
            sharing.text("way"),
            sharing.percent("basePercent"),
            sharing.money("hostCredit"),
            afterwards(sharing));
    return new GroupReading.Accepted(
        new Group(json.text("name"), keepers, agreement, terms), warnings);
  }

  private static Group.Afterwards afterwards(Json.Obj sharing) {
    String dropOut = sharing.text("dropOut");
    String loss = sharing.text("lostPieces");
    return new Group.Afterwards(
        Stream.of(Group.DropOut.values())
            .filter(it -> it.id().equals(dropOut))
            .findFirst()
            .orElseThrow(),
        Stream.of(Group.Loss.values())
            .filter(it -> it.id().equals(loss))
            .findFirst()
            .orElseThrow());
  }

  private void readScenario(Json.Obj member) {
    if (member.has("scenario") == member.has("wanted")) {
      String typed =
          member.has("wanted") ? "both scenario and wanted" : "neither scenario nor wanted";
      problems.add(new Problem(member.where(), typed, "exactly one of them", ""));
    }
    if (!member.has("scenario")) {
      return;
    }
    String name = member.text("scenario");
    Reading reading = ScenarioFolder.read(folder.resolve(name), profiles);
    if (reading instanceof Reading.Accepted accepted) {
      accepted.warnings().forEach(warning -> warnings.add(member.text("name") + ": " + warning));
      agree(member, accepted.scenario());
      scenarios.put(member.text("name"), accepted.scenario());
    } else {
      for (Problem problem : ((Reading.Refused) reading).problems()) {
        Where where = problem.where();
        String within = where.file().startsWith("/") ? where.file() : name + "/" + where.file();
        problems.add(
            new Problem(
                new Where(within, where.line(), where.column()),
                problem.found(),
                problem.expected(),
                problem.hint()));
      }
    }
  }

  /** All plan the same days, in the same money, by the same policy. */
  private void agree(Json.Obj member, Scenario scenario) {
    boolean sorted =
        scenario.suppliers().stream()
            .flatMap(supplier -> supplier.sheet().packs().stream())
            .anyMatch(Pack::sorted);
    if (sorted) {
      problems.add(
          new Problem(
              member.get("scenario").where(),
              "sortBags",
              "bags as they are sold",
              "Bags of a joint order are handed out before anybody sorts them."));
    }
    for (Scenario first : scenarios.values().stream().limit(1).toList()) {
      Json typed = member.get("scenario");
      if (!first.planning().equals(scenario.planning())) {
        problems.add(
            new Problem(
                typed.where(),
                "planning days " + Days.text(scenario.planning()),
                Days.text(first.planning()) + " as in the first member's scenario",
                ""));
      }
      if (!first.currency().equals(scenario.currency())) {
        problems.add(
            new Problem(
                typed.where(),
                "money in " + scenario.currency(),
                first.currency() + " as in the first member's scenario",
                ""));
      }
      if (!first.policy().equals(scenario.policy())) {
        problems.add(
            new Problem(
                typed.where(),
                "a policy of its own",
                "the policy of the first member's scenario",
                "What is charged, kept and carried over must be the same for all."));
      }
    }
  }

  private List<Keeper> keepers(Json.Obj json) {
    List<Keeper> keepers = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Json.Obj member : json.objects("members")) {
      Json name = member.get("name");
      if (!names.add(member.text("name"))) {
        problems.add(
            new Problem(name.where(), name.shown(), "a name that no other member has", ""));
      }
      if (member.has("wanted") && !scenarios.isEmpty()) {
        Scenario like = scenarios.values().iterator().next();
        new WantedPart(like, problems)
            .read(member)
            .ifPresent(scenario -> keepers.add(keeper(member, scenario)));
      } else if (member.has("wanted")) {
        String expected = "at least one member with a scenario";
        problems.add(new Problem(member.where(), "only wanted pieces", expected, ""));
      } else if (scenarios.containsKey(member.text("name"))) {
        keepers.add(keeper(member, scenarios.get(member.text("name"))));
      }
    }
    return keepers;
  }

  private static Keeper keeper(Json.Obj member, Scenario scenario) {
    Waiting waiting = Waiting.NONE;
    if (member.has("keepsForOthers")) {
      Json.Obj keeps = member.object("keepsForOthers");
      waiting = new Waiting(Litres.of(keeps.decimal("litres")), keeps.integer("days"));
    }
    return new Keeper(member.text("name"), scenario, waiting);
  }

  private Agreement agreement(Json.Obj json) {
    List<String> members =
        json.objects("members").stream().map(member -> member.text("name")).toList();
    for (Json host : json.items("hosts")) {
      if (!members.contains(((Json.Text) host).value())) {
        problems.add(
            new Problem(
                host.where(),
                host.shown(),
                "one of the members " + String.join(", ", members),
                ""));
      }
    }
    Map<String, Integer> leastPieces = new HashMap<>();
    for (Json.Obj cut : json.objects("cutting")) {
      String id = cut.text("item") + " x" + cut.integer("packCount");
      if (scenarios.size() > 0 && !isSold(id)) {
        String expected = "an item and a count of a price sheet";
        problems.add(new Problem(cut.where(), Problem.quote(id), expected, ""));
      }
      leastPieces.put(id, cut.integer("leastPieces"));
    }
    Set<LocalDate> handOvers = new HashSet<>();
    json.texts("handOvers").forEach(day -> handOvers.add(LocalDate.parse(day)));
    return new Agreement(json.texts("hosts"), handOvers, new Cutting(leastPieces, false));
  }

  private boolean isSold(String packId) {
    return scenarios.values().stream()
        .flatMap(scenario -> scenario.suppliers().stream())
        .flatMap(supplier -> supplier.sheet().packs().stream())
        .anyMatch(pack -> pack.id().equals(packId));
  }
}
