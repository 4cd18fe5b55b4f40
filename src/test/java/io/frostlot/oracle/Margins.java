package io.frostlot.oracle;

import io.frostlot.forecast.Option;
import io.frostlot.supply.Item;
import io.frostlot.units.Percent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What should be left of each size band when a delivery comes, as a share of the pieces eaten since
 * the one before, rounded up; followed through the days in the counts of a state: by band the
 * pieces eaten since, then those lacking on the last night.
 *
 * <p>A band is one kind of prey from one power of two of mean grams up to the next. A delivery
 * comes on its latest day.
 */
final class Margins {
  private static final long WHOLE = 1_000_000;
  private final Tiny tiny;
  private final int first;
  private final long share;
  private final int lastDelivery;
  private final List<Integer> bandOfItem = new ArrayList<>();
  private final int bands;

  private record Band(String kind, long milligrams) {
    static Band of(Item item) {
      long edge = 1000;
      while (2 * edge <= item.grams().mean().milligrams()) {
        edge *= 2;
      }
      return new Band(item.kind(), edge);
    }
  }

  /**
   * Margins of a tiny world.
   *
   * @param first of their counts in a state
   */
  Margins(Tiny tiny, int first) {
    this.tiny = tiny;
    this.first = first;
    Percent margin = tiny.world.scenario().policy().safety().margin();
    share = margin.value().movePointRight(4).longValueExact();
    List<Band> all = tiny.items.stream().map(Band::of).distinct().toList();
    tiny.items.forEach(item -> bandOfItem.add(all.indexOf(Band.of(item))));
    bands = share == 0 ? 0 : all.size();
    lastDelivery =
        Stream.concat(
                tiny.world.slots().stream().map(slot -> slot.arrivesLatest()),
                tiny.world.scenario().larder().placed().stream().map(lot -> lot.arrivesLatest()))
            .mapToInt(tiny::day)
            .filter(day -> day < tiny.planned)
            .max()
            .orElse(0);
  }

  /** Counts that they need. */
  int size() {
    return 2 * bands;
  }

  private int since(int band) {
    return first + band;
  }

  private int lacking(int band) {
    return first + bands + band;
  }

  /** A meal is eaten. */
  State eat(State state, Option option, int day) {
    if (bands == 0 || day >= lastDelivery) {
      return state;
    }
    int since = since(bandOfItem.get(tiny.item(option.item())));
    return state.withCount(since, state.counts()[since] + option.pieces());
  }

  /** A delivery of this day, if any, finds what was left on the night before. */
  Stage come(int day) {
    return (state, trail, next) -> {
      if (day == 0 || !comes(state, day)) {
        next.add(state, Score.ZERO, trail);
        return;
      }
      int lacked = IntStream.range(0, bands).map(band -> state.counts()[lacking(band)]).sum();
      next.add(cleared(state), new Score(0, 0, lacked, 0), trail);
    };
  }

  private static boolean comes(State state, int day) {
    Cells recent = state.recent();
    return IntStream.range(0, recent.size())
        .anyMatch(cell -> recent.from(cell) == Cells.comingOn(day));
  }

  private State cleared(State state) {
    State cleared = state;
    for (int count = first; count < first + size(); count++) {
      cleared = cleared.withCount(count, 0);
    }
    return cleared;
  }

  /** Should a delivery come tomorrow, so much lacks. */
  Stage night(int day) {
    return (state, trail, next) -> {
      if (day >= lastDelivery) {
        next.add(cleared(state), Score.ZERO, trail);
        return;
      }
      State counted = state;
      for (int band = 0; band < bands; band++) {
        long wanted = -Math.floorDiv(-share * state.counts()[since(band)], WHOLE);
        int lacking = (int) Math.max(0, wanted - left(state, band, day));
        counted = counted.withCount(lacking(band), lacking);
      }
      next.add(counted, Score.ZERO, trail);
    };
  }

  private int left(State state, int band, int day) {
    Cells cells = state.cells();
    return IntStream.range(0, cells.size())
        .filter(cell -> bandOfItem.get(cells.item(cell)) == band && cells.isHere(cell, day))
        .map(cells::count)
        .sum();
  }
}
