package io.frostlot.program;

import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A relaxation: freezers in use are taken for one that has their room and the longest of their
 * lives.
 */
final class Pool {
  private Pool() {}

  /** The world with one freezer in place of all that are in use. */
  static World of(World world) {
    return of(world, freezer -> true);
  }

  /** The world with one freezer in place of all that are in use and keep as long. */
  static World byLife(World world) {
    return of(world, Freezer::life);
  }

  private static World of(World world, Function<Freezer, Object> kind) {
    Scenario.Larder larder = world.scenario().larder();
    Map<Object, List<Freezer>> inUse =
        larder.freezers().stream()
            .filter(Freezer::inUse)
            .collect(Collectors.groupingBy(kind, LinkedHashMap::new, Collectors.toList()));
    if (inUse.values().stream().allMatch(alike -> alike.size() < 2)) {
      return world;
    }
    Map<String, Freezer> pooled = new LinkedHashMap<>();
    inUse
        .values()
        .forEach(
            alike -> {
              Freezer pool = pool(alike);
              alike.forEach(freezer -> pooled.put(freezer.name(), pool));
            });
    List<Freezer> freezers = new ArrayList<>(new LinkedHashSet<>(pooled.values()));
    larder.freezers().stream().filter(freezer -> !freezer.inUse()).forEach(freezers::add);
    Scenario.Larder one =
        new Scenario.Larder(
            freezers,
            larder.stock().stream()
                .map(
                    lot ->
                        pooled.containsKey(lot.freezer()) ? lot.in(pooled.get(lot.freezer())) : lot)
                .toList(),
            larder.placed());
    return world.withScenario(world.scenario().withLarder(one)).alone();
  }

  private static Freezer pool(List<Freezer> inUse) {
    long microlitres = inUse.stream().mapToLong(f -> f.usable().microlitres()).sum();
    List<Freezer.Life> lives = inUse.stream().map(Freezer::life).toList();
    int smallDays = lives.stream().mapToInt(Freezer.Life::smallDays).max().orElseThrow();
    int days = lives.stream().mapToInt(Freezer.Life::days).max().orElseThrow();
    Grams smallBelow =
        lives.stream().map(Freezer.Life::smallBelow).min(Comparator.naturalOrder()).orElseThrow();
    return new Freezer(
        inUse.get(0).name(),
        new Litres(microlitres),
        inUse.get(0).kind(),
        new Freezer.Life(Math.max(days, smallDays), smallBelow, smallDays),
        true);
  }
}
