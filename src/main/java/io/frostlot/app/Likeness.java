package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.plan.Group;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Scenario;
import io.frostlot.sharing.Subgroup;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Which subgroups are alike but for names, so that they cost the same. */
final class Likeness {
  private final Group group;
  private final List<Integer> likes = new ArrayList<>();
  private final Map<Kind, Subgroup> firsts = new ConcurrentHashMap<>();

  /** The first keeper like the host, and those like the members. */
  private record Kind(Optional<Integer> host, List<Integer> members) {}

  Likeness(Group group) {
    this.group = group;
    Map<Keeper, Integer> seen = new HashMap<>();
    for (Keeper keeper : group.keepers()) {
      likes.add(seen.computeIfAbsent(nameless(keeper), k -> seen.size()));
    }
    if (likes.size() <= SubgroupPlans.MOST_EXACT) {
      Subgroup.within(Subgroup.all(likes.size()))
          .forEach(some -> firsts.putIfAbsent(kind(some), some));
    }
  }

  /**
   * The first of those like a subgroup of several, in a large group the first asked for; a single
   * member is like itself only.
   */
  Subgroup first(Subgroup some) {
    return some.size() == 1 ? some : firsts.computeIfAbsent(kind(some), kind -> some);
  }

  /** Members of each kind, in the group's order. */
  Collection<List<Integer>> kinds() {
    Map<Integer, List<Integer>> kinds = new TreeMap<>();
    for (int member = 0; member < likes.size(); member++) {
      kinds.computeIfAbsent(likes.get(member), kind -> new ArrayList<>()).add(member);
    }
    return kinds.values();
  }

  private Kind kind(Subgroup some) {
    List<Keeper> keepers = some.members().stream().map(group.keepers()::get).toList();
    Optional<Integer> host =
        group.agreement().host(keepers).map(h -> likes.get(group.keepers().indexOf(h)));
    return new Kind(host, some.members().stream().map(likes::get).sorted().toList());
  }

  private static Keeper nameless(Keeper keeper) {
    Scenario scenario = keeper.scenario();
    List<Animal> animals = new ArrayList<>();
    for (Animal animal : scenario.collection().animals()) {
      animals.add(animal.named("animal " + animals.size()));
    }
    return new Keeper(
        "",
        new Scenario(
            "",
            scenario.planning(),
            scenario.currency(),
            new Scenario.Collection(animals, scenario.collection().needs()),
            scenario.larder(),
            scenario.suppliers(),
            scenario.away(),
            scenario.policy()),
        keeper.waiting());
  }
}
