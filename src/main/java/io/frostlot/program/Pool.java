package io.frostlot.program;

import io.frostlot.plan.Lot;
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
import java.util.Comparator;
import java.util.List;
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
    List<Freezer> inUse =
        world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
    if (inUse.size() < 2) {
      return world;
    }
    Freezer pool = pool(inUse);
    LotKinds kinds = new LotKinds(world);
    Set<String> names = inUse.stream().map(Freezer::name).collect(Collectors.toSet());
    Scenario.Larder larder = world.scenario().larder();
    List<Freezer> freezers = new ArrayList<>(List.of(pool));
    larder.freezers().stream().filter(freezer -> !freezer.inUse()).forEach(freezers::add);
    Scenario.Larder one =
        new Scenario.Larder(
            freezers,
            larder.stock().stream()
                .map(lot -> names.contains(lot.freezer()) ? kept(lot, kinds, world).in(pool) : lot)
                .toList(),
            larder.placed());
    return world.withScenario(world.scenario().withLarder(one)).withoutMoves().alone();
  }

  /** The same, where it is still known which keeper's animals eat what. */
  static World byEater(World world) {
    Set<String> eaters =
        world.demands().stream().map(demand -> demand.meal().eater()).collect(Collectors.toSet());
    World pooled = of(world);
    return pooled.equals(world) ? world : pooled.withJoint(world.joint().ofEaters(eaters));
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
