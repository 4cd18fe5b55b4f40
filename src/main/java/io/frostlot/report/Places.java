package io.frostlot.report;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Where lots lie and until when they are usable, so that this is said once for many of them. */
final class Places {
  private Places() {}

  /** Lots by place, such as "Chest, use by Tue 15 Jul 2031", and in each by name. */
  static Map<String, List<Lot>> of(World world, List<Lot> lots) {
    return by(world, lots, Function.identity());
  }

  /** The same for things that are parts of lots. */
  static <T> Map<String, List<T>> by(World world, List<T> things, Function<T, Lot> lot) {
    return things.stream()
        .sorted(
            Comparator.comparing((T thing) -> lot.apply(thing).firstFreezer())
                .thenComparing(thing -> lot.apply(thing).useBy())
                .thenComparing(thing -> lot.apply(thing).item().name()))
        .collect(
            Collectors.groupingBy(
                thing -> place(world, lot.apply(thing)), LinkedHashMap::new, Collectors.toList()));
  }

  /** With its best before where a piece that is eaten later is charged for. */
  private static String place(World world, Lot lot) {
    LocalDate best = world.bestBefore(lot);
    boolean charged = !world.scenario().policy().charges().pastBest().isZero();
    return lot.firstFreezer()
        + (lot.isMoved()
            ? ", to "
                + lot.freezer()
                + Wording.NO_BREAK
                + "on"
                + Wording.NO_BREAK
                + Wording.day(lot.move().day())
            : "")
        + (charged && best.isBefore(lot.useBy())
            ? ", best" + Wording.NO_BREAK + "before" + Wording.NO_BREAK + Wording.day(best)
            : "")
        + ", use"
        + Wording.NO_BREAK
        + "by"
        + Wording.NO_BREAK
        + Wording.day(lot.useBy());
  }
}
