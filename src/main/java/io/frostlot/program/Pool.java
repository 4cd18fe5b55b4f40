package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.plan.Moving;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A relaxation: all freezers in use are taken for one that has their room and the longest of their
 * lives, which a move from the one to the other could not exceed.
 */
final class Pool {
  private Pool() {}

  /** The world with one freezer in place of all that are in use. */
  static World of(World world) {
    List<Freezer> inUse = inUse(world);
    return inUse.size() < 2 ? world : pooled(world, List.of(inUse)).alone();
  }

  /**
   * The same, but with one for each life, unless prey may be moved between them, and it is still
   * known which keeper's animals eat what.
   */
  static World byLife(World world) {
    boolean moved = !new Moving(world).days().isEmpty();
    Map<Object, List<Freezer>> groups = new LinkedHashMap<>();
    for (Freezer freezer : inUse(world)) {
      groups
          .computeIfAbsent(moved ? "all" : freezer.life(), life -> new ArrayList<>())
          .add(freezer);
    }
    Map<String, Set<String>> eaters = new HashMap<>();
    groups.values().forEach(group -> eaters.put(group.get(0).name(), keepers(world, group)));
    return pooled(world, groups.values()).withJoint(world.joint().pooled(eaters));
  }

  private static Set<String> keepers(World world, List<Freezer> group) {
    return group.stream().map(world.joint()::keeperOf).collect(Collectors.toSet());
  }

  private static List<Freezer> inUse(World world) {
    return world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
  }

  private static World pooled(World world, Collection<List<Freezer>> groups) {
    Map<String, Freezer> pools = new HashMap<>();
    List<Freezer> freezers = new ArrayList<>();
    for (List<Freezer> group : groups) {
      Freezer pool = pool(group);
      freezers.add(pool);
      group.forEach(freezer -> pools.put(freezer.name(), pool));
    }
    LotKinds kinds = new LotKinds(world);
    Scenario.Larder larder = world.scenario().larder();
    larder.freezers().stream().filter(freezer -> !freezer.inUse()).forEach(freezers::add);
    List<StockLot> stock = new ArrayList<>();
    for (StockLot lot : larder.stock()) {
      Freezer pool = pools.get(lot.freezer());
      stock.add(pool == null ? lot : kept(lot, kinds, world).in(pool));
    }
    Scenario.Larder fewer = new Scenario.Larder(freezers, stock, larder.placed());
    return world.withScenario(world.scenario().withLarder(fewer)).withoutMoves();
  }

  /**
   * With the latest dates that it could have anywhere: moved first thing, where that is longest.
   */
  private static StockLot kept(StockLot lot, LotKinds kinds, World world) {
    Keeps latest = lot.keeps();
    for (Lot moved : kinds.of(lot).toList()) {
      Keeps other = world.keeps(moved);
      LocalDate useBy = later(latest.useBy(), other.useBy());
      latest = new Keeps(later(latest.bestBefore(), other.bestBefore()), useBy);
    }
    return lot.kept(latest);
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private static Freezer pool(List<Freezer> inUse) {
    long microlitres = inUse.stream().mapToLong(f -> f.usable().microlitres()).sum();
    List<Freezer.Life> lives = inUse.stream().map(Freezer::life).toList();
    int smallDays = lives.stream().mapToInt(Freezer.Life::smallDays).max().orElseThrow();
    int days = lives.stream().mapToInt(Freezer.Life::days).max().orElseThrow();
    int bestDays = lives.stream().mapToInt(life -> life.best().days()).max().orElseThrow();
    Grams smallBelow =
        lives.stream().map(Freezer.Life::smallBelow).min(Comparator.naturalOrder()).orElseThrow();
    return new Freezer(
        inUse.get(0).name(),
        new Litres(microlitres),
        inUse.get(0).kind(),
        new Freezer.Life(
            Math.max(days, smallDays), smallBelow, smallDays, new Freezer.Best(bestDays)),
        new Freezer.Access(true, Freezer.Company.NONE, limits(inUse)));
  }

  /** Stretches of days on which together they have less room than they could have. */
  private static List<Freezer.Limit> limits(List<Freezer> inUse) {
    TreeSet<LocalDate> edges = new TreeSet<>();
    for (Freezer freezer : inUse) {
      for (Freezer.Limit limit : freezer.access().limits()) {
        edges.add(limit.days().from());
        edges.add(limit.days().to().plusDays(1));
      }
    }
    List<Freezer.Limit> limits = new ArrayList<>();
    for (LocalDate from : edges) {
      LocalDate next = edges.higher(from);
      if (next != null) {
        long room = inUse.stream().mapToLong(it -> it.usableOn(from).microlitres()).sum();
        limits.add(new Freezer.Limit(new Period(from, next.minusDays(1)), new Litres(room)));
      }
    }
    return limits;
  }
}
