package io.frostlot.app;

import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.Game;
import io.frostlot.sharing.Subgroup;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * Plans all subgroups of a group side by side, each a little; then again, each time for longer,
 * those whose cost is known least, until all are known well enough or the time is over.
 */
final class SubgroupWork {
  /** A search has two threads of its own. */
  private static final int THREADS = 2;

  private static final long MOST_MILLIS = 15_000;

  private final SubgroupPlans plans;
  private final Limits limits;
  private final ShareBox.Progress progress;
  private final long end;
  private final Map<Subgroup, Integer> rounds = new HashMap<>();
  private double width;

  SubgroupWork(SubgroupPlans plans, Limits limits, ShareBox.Progress progress) {
    this.plans = plans;
    this.limits = limits;
    this.progress = progress;
    end = System.nanoTime() + limits.millis() * 1_000_000;
  }

  /**
   * Does it.
   *
   * @param width up to which costs should be known
   */
  void run(double width) {
    this.width = width;
    List<Subgroup> parts = new ArrayList<>(plans.game().parts());
    parts.removeIf(some -> !plans.isFirst(some));
    List<Subgroup> first = new ArrayList<>(parts);
    first.removeIf(some -> some.size() == 1 && plans.range(some).width() <= width);
    // each alone before all others, for where nothing is known of one, nothing is of all with it
    first.sort(Comparator.comparingInt(Subgroup::size));
    if (limits.rounds().isPresent()) {
      // what all others begin with is then the same whoever ends first
      List<Subgroup> alone = first.stream().filter(some -> some.size() == 1).toList();
      all(alone, limits.time(), first.size());
      first.removeAll(alone);
    }
    all(first, slice(first.size()), first.size());
    if (plans.unmetAlone().isEmpty()) {
      parts.add(plans.all());
    }
    while (secondsLeft() >= 1 && !progress.stop() && limits.rounds().isEmpty()) {
      Game game = plans.game();
      parts.removeIf(some -> game.cost(some).width() <= width);
      if (parts.isEmpty()) {
        return;
      }
      Subgroup widest =
          parts.stream().max(Comparator.comparingDouble(some -> worth(some, game))).orElseThrow();
      int round = Math.min(rounds.merge(widest, 1, Integer::sum), 6) - 1;
      long seconds = Math.min(secondsLeft(), (secondsLeft() / parts.size()) << round);
      all(List.of(widest), Duration.ofSeconds(Math.max(1, seconds)), 1);
    }
  }

  /** How far apart least and most are, counted for half with each time that it was looked at. */
  private double worth(Subgroup some, Game game) {
    return game.cost(some).width() / (1 << Math.min(rounds.getOrDefault(some, 0), 6));
  }

  /** A part of the time, such that all can be planned in half of it; all where rounds count. */
  private Duration slice(int count) {
    if (limits.rounds().isPresent()) {
      return limits.time();
    }
    int side = side();
    long millis = limits.millis() / 2 * side / Math.max(1, count);
    return Duration.ofMillis(Math.max(500, Math.min(millis, MOST_MILLIS)));
  }

  private int side() {
    int cores = Runtime.getRuntime().availableProcessors();
    return limits.rounds().isPresent() ? cores : Math.max(1, cores / THREADS);
  }

  private long secondsLeft() {
    return TimeUnit.NANOSECONDS.toSeconds(end - System.nanoTime());
  }

  private Watch enough() {
    return new Patience(
        Watch.stopping(progress::stop),
        limits.time(),
        found -> limits.rounds().isEmpty() && found.isKnownWithin(width));
  }

  private void all(List<Subgroup> some, Duration each, int count) {
    ExecutorService pool = Executors.newFixedThreadPool(side());
    int[] planned = {0};
    for (Subgroup part : some) {
      pool.execute(
          () -> {
            if (!progress.stop()) {
              plans.solve(part, new Limits(each, limits.rounds()), enough());
              synchronized (planned) {
                planned[0]++;
                progress.subgroups(planned[0], count, plans.game().widest());
              }
            }
          });
    }
    pool.shutdown();
    try {
      while (!pool.awaitTermination(100, TimeUnit.MILLISECONDS)) {
        if (progress.stop()) {
          pool.shutdownNow();
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
