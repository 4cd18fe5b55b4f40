package io.frostlot.program;

import io.frostlot.plan.Division;
import io.frostlot.plan.Handed;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToIntBiFunction;
import java.util.stream.Collectors;

/**
 * The ways in which a pack of a delivery may be handed out: whole to a keeper, or, where it may be
 * cut, to two of them, of whom one gets a least portion, a quarter or a half. Of other divisions
 * only those are looked at that are asked for.
 */
final class Bags {
  private final World world;
  private final ToIntBiFunction<String, Item> number;
  private final Set<Bag> others;

  /**
   * Of a world.
   *
   * @param number of a ware, by keeper and item
   * @param others further ways
   */
  Bags(World world, ToIntBiFunction<String, Item> number, Set<Bag> others) {
    this.world = world;
    this.number = number;
    this.others = Set.copyOf(others);
  }

  /** Further ways. */
  Set<Bag> others() {
    return others;
  }

  /** Each whole or divided. */
  List<Bag> of(Slot slot, List<Pack> packs) {
    List<String> keepers = world.keepers().stream().filter(keeper -> mayGet(keeper, slot)).toList();
    Set<Bag> bags = new LinkedHashSet<>();
    for (Pack pack : packs) {
      keepers.forEach(keeper -> bags.add(whole(pack, keeper)));
      if (keepers.size() > 1 && !pack.sorted() && world.joint().cutting().mayCut(pack)) {
        Set<Integer> wares = wares(pack, keepers);
        bags.addAll(cut(pack, keepers));
        others.stream()
            .filter(bag -> bag.pack().equals(pack))
            .filter(bag -> bag.parts().stream().map(Bag.Part::ware).allMatch(wares::contains))
            .forEach(bags::add);
      }
    }
    return List.copyOf(bags);
  }

  private Set<Integer> wares(Pack pack, List<String> keepers) {
    return keepers.stream()
        .map(keeper -> number.applyAsInt(keeper, pack.item()))
        .collect(Collectors.toSet());
  }

  /** How many packs of a plan's order are handed out how; empty where that is not known. */
  Optional<Map<Bag, Integer>> of(Order order, Plan plan) {
    Map<Bag, Integer> bags = new LinkedHashMap<>();
    if (world.keepers().size() < 2 || !world.joint().isJoint(order.slot())) {
      String first = world.keepers().get(0);
      String buyer = world.joint().buyers().getOrDefault(order.slot().supplier(), first);
      order.packs().forEach((pack, count) -> bags.put(whole(pack, buyer), count));
      return Optional.of(bags);
    }
    for (Handed handed : Handed.of(world, plan)) {
      if (handed.order().equals(order)) {
        Optional<List<Division.Portion>> division = handed.division(world.joint().cutting());
        if (division.isEmpty()) {
          return Optional.empty();
        }
        division.get().stream()
            .collect(
                Collectors.groupingBy(Division.Portion::bag, TreeMap::new, Collectors.toList()))
            .values()
            .forEach(portions -> bags.merge(of(portions), 1, Integer::sum));
      }
    }
    return Optional.of(bags);
  }

  private Bag of(List<Division.Portion> portions) {
    Map<String, Integer> pieces = new HashMap<>();
    portions.forEach(it -> pieces.merge(it.keeper(), it.pieces(), Integer::sum));
    return of(portions.get(0).pack(), pieces);
  }

  private boolean mayGet(String keeper, Slot slot) {
    Joint joint = world.joint();
    return world.scenario().larder().freezers().stream()
        .filter(Freezer::inUse)
        .filter(freezer -> joint.keeperOf(freezer).equals(keeper))
        .anyMatch(freezer -> !joint.comings(slot, freezer).isEmpty());
  }

  private Bag whole(Pack pack, String keeper) {
    return new Bag(
        pack,
        pack.parts().stream()
            .map(part -> new Bag.Part(number.applyAsInt(keeper, part.item()), part.pieces()))
            .toList());
  }

  private Set<Bag> cut(Pack pack, List<String> keepers) {
    Set<Bag> bags = new LinkedHashSet<>();
    for (String one : keepers) {
      for (String other : keepers) {
        for (int pieces : portions(pack)) {
          if (!one.equals(other)) {
            bags.add(of(pack, Map.of(one, pieces, other, pack.pieces() - pieces)));
          }
        }
      }
    }
    return bags;
  }

  /** A least portion, a quarter and a half, as far as they are large enough. */
  private Set<Integer> portions(Pack pack) {
    int least = world.joint().cutting().least(pack);
    return new TreeSet<>(
        List.of(least, Math.max(least, pack.pieces() / 4), Math.max(least, pack.pieces() / 2)));
  }

  /**
   * A pack of one item as it is divided.
   *
   * @param pieces by keeper
   */
  private Bag of(Pack pack, Map<String, Integer> pieces) {
    return new Bag(
        pack,
        pieces.entrySet().stream()
            .map(it -> new Bag.Part(number.applyAsInt(it.getKey(), pack.item()), it.getValue()))
            .sorted(Comparator.comparingInt(Bag.Part::ware))
            .toList());
  }
}
