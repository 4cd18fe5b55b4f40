package io.frostlot.plan;

import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How the bags of one item in one order are divided so that each keeper gets so many pieces: whole,
 * or cut where that is allowed; found by trying whole bags first.
 */
public final class Division {
  private final Cutting cutting;
  private final List<Pack> bags;
  private final SortedMap<String, Integer> wanted;
  private final List<Portion> portions = new ArrayList<>();
  private final Set<List<Object>> hopeless = new HashSet<>();

  private Division(Cutting cutting, List<Pack> bags, SortedMap<String, Integer> wanted) {
    this.cutting = cutting;
    this.bags = bags;
    this.wanted = wanted;
  }

  /**
   * A bag, or a part of one.
   *
   * @param bag its number among the bags of the item in the order, from 1
   * @param pieces all of the bag, or a portion
   */
  public record Portion(String keeper, Pack pack, int bag, int pieces) {
    public boolean isWhole() {
      return pieces == pack.pieces();
    }
  }

  /** Most bags of one row that are cut, for so many keepers. */
  public static int mostCuts(int keepers) {
    return 2 * (keepers - 1);
  }

  /**
   * The portions of every bag; empty where there is no such division.
   *
   * @param lines all of one item
   * @param wanted pieces by keeper
   */
  public static Optional<List<Portion>> of(
      Cutting cutting, List<Order.Line> lines, Map<String, Integer> wanted) {
    List<Pack> bags = new ArrayList<>();
    lines.stream()
        .sorted((a, b) -> Integer.compare(cutting.least(b.pack()), cutting.least(a.pack())))
        .forEach(line -> bags.addAll(Collections.nCopies(line.packs(), line.pack())));
    Division division = new Division(cutting, bags, new TreeMap<>(wanted));
    return division.divide(0, new TreeMap<>())
        ? Optional.of(List.copyOf(division.portions))
        : Optional.empty();
  }

  private boolean divide(int bag, Map<String, Integer> cuts) {
    if (bag == bags.size()) {
      return wanted.values().stream().allMatch(left -> left == 0);
    }
    List<Object> state = List.of(bag, List.copyOf(wanted.values()), Map.copyOf(cuts));
    if (hopeless.contains(state)) {
      return false;
    }
    Pack pack = bags.get(bag);
    List<String> mostFirst = new ArrayList<>(wanted.keySet());
    mostFirst.sort((a, b) -> Integer.compare(wanted.get(b), wanted.get(a)));
    for (String keeper : mostFirst) {
      if (wanted.get(keeper) >= pack.pieces() && give(keeper, bag, pack.pieces())) {
        if (divide(bag + 1, cuts)) {
          return true;
        }
        takeBack(keeper);
      }
    }
    int cut = cuts.getOrDefault(pack.id(), 0);
    if (cutting.mayCut(pack) && cut < mostCuts(wanted.size())) {
      Map<String, Integer> more = new TreeMap<>(cuts);
      more.put(pack.id(), cut + 1);
      if (cut(bag, List.copyOf(wanted.keySet()), pack.pieces(), more)) {
        return true;
      }
    }
    hopeless.add(state);
    return false;
  }

  /** Cuts a bag among some keepers, so many pieces of it being left. */
  private boolean cut(int bag, List<String> keepers, int left, Map<String, Integer> cuts) {
    if (left == 0) {
      return divide(bag + 1, cuts);
    }
    if (keepers.isEmpty()) {
      return false;
    }
    String keeper = keepers.get(0);
    List<String> others = keepers.subList(1, keepers.size());
    Pack pack = bags.get(bag);
    int least = cutting.least(pack);
    int most = Math.min(Math.min(left, pack.pieces() - least), wanted.get(keeper));
    for (int pieces = most; pieces >= least; pieces--) {
      if (give(keeper, bag, pieces)) {
        if (cut(bag, others, left - pieces, cuts)) {
          return true;
        }
        takeBack(keeper);
      }
    }
    return cut(bag, others, left, cuts);
  }

  private boolean give(String keeper, int bag, int pieces) {
    wanted.merge(keeper, -pieces, Integer::sum);
    return portions.add(new Portion(keeper, bags.get(bag), bag + 1, pieces));
  }

  private void takeBack(String keeper) {
    Portion last = portions.remove(portions.size() - 1);
    wanted.merge(keeper, last.pieces(), Integer::sum);
  }
}
