package io.frostlot.program;

import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Meals of a {@link Trial} as feedings, each from the lots that it takes its pieces of. */
final class TrialFeedings {
  private final TrialWorld of;
  private final Trial trial;
  private final List<List<Left>> left = new ArrayList<>();

  /** Nothing is eaten yet. */
  TrialFeedings(TrialWorld of, Trial trial) {
    this.of = of;
    this.trial = trial;
    of.wares().forEach(ware -> left.add(new ArrayList<>()));
  }

  /** Pieces of a lot that are not eaten yet. */
  private static final class Left {
    private final Lot lot;
    private int pieces;

    Left(Lot lot, int pieces) {
      this.lot = lot;
      this.pieces = pieces;
    }
  }

  private record Served(String meal, Menu.Way way) {}

  /** Pieces of a ware, to be eaten after those before. */
  void add(int ware, Lot lot, int pieces) {
    left.get(ware).add(new Left(lot, pieces));
  }

  /** All, by day; once only. */
  List<Feeding> all() {
    Map<Served, Integer> served = new LinkedHashMap<>();
    for (int d = 0; d < of.menu().dishes().size(); d++) {
      if (trial.isServed(d)) {
        String meal = of.menu().dishes().get(d).demand().meal().id();
        served.merge(new Served(meal, trial.way(d)), 1, Integer::sum);
      }
    }
    List<Served> byDay = new ArrayList<>(served.keySet());
    byDay.sort(Comparator.comparingInt((Served it) -> it.way().day()).thenComparing(Served::meal));
    return byDay.stream().map(it -> feeding(it, served.get(it))).toList();
  }

  private Feeding feeding(Served served, int meals) {
    Menu.Way way = served.way();
    List<Feeding.Draw> draws = new ArrayList<>();
    int needed = way.pieces() * meals;
    for (Left some : left.get(way.item())) {
      boolean there =
          of.look().day(some.lot.latest()) <= way.day()
              && way.day() <= of.look().day(some.lot.useBy());
      int taken = there ? Math.min(needed, some.pieces) : 0;
      if (taken > 0) {
        draws.add(new Feeding.Draw(some.lot.id(), taken));
        some.pieces -= taken;
        needed -= taken;
      }
    }
    return new Feeding(served.meal(), of.look().date(way.day()), way.option(), meals, draws);
  }
}
