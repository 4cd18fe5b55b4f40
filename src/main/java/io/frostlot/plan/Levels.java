package io.frostlot.plan;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** How many pieces of each lot of a plan are there, day by day. */
public final class Levels {
  private final Map<String, NavigableMap<LocalDate, Taken>> byLot = new HashMap<>();

  /** Pieces taken up to a day; those of its meals beside those before them. */
  private record Taken(int before, int atMeals, int allMeals) {
    static final Taken NOTHING = new Taken(0, 0, 0);

    int all() {
      return before + atMeals;
    }

    Taken and(Taken later) {
      return new Taken(all() + later.before, later.atMeals, allMeals + later.atMeals);
    }

    Taken plus(Taken same) {
      return new Taken(before + same.before, atMeals + same.atMeals, 0);
    }
  }

  public Levels(Plan plan) {
    for (Feeding feeding : plan.feedings()) {
      for (Feeding.Draw draw : feeding.draws()) {
        add(draw.lotId(), feeding.day(), new Taken(0, draw.pieces(), 0));
      }
    }
    for (Discard discard : plan.discards()) {
      add(discard.lotId(), discard.day(), new Taken(discard.pieces(), 0, 0));
    }
    byLot.values().forEach(Levels::addUp);
  }

  private void add(String lotId, LocalDate day, Taken taken) {
    byLot.computeIfAbsent(lotId, id -> new TreeMap<>()).merge(day, taken, Taken::plus);
  }

  private static void addUp(NavigableMap<LocalDate, Taken> byDay) {
    Taken sum = Taken.NOTHING;
    for (Map.Entry<LocalDate, Taken> entry : byDay.entrySet()) {
      sum = sum.and(entry.getValue());
      entry.setValue(sum);
    }
  }

  /** Pieces at the time of day at which freezers are checked. */
  public int checked(Lot lot, LocalDate day, Policy.FreezerCheck check) {
    return check == Policy.FreezerCheck.END_OF_DAY ? atNight(lot, day) : beforeMeals(lot, day);
  }

  /** Pieces of a lot that take room after the delivery of a day and before its meals. */
  public int beforeMeals(Lot lot, LocalDate day) {
    return left(lot, day, false);
  }

  /** Pieces of a lot that lie in the freezer at night. */
  public int atNight(Lot lot, LocalDate day) {
    return left(lot, day, true);
  }

  private int left(Lot lot, LocalDate day, boolean afterMeals) {
    if (day.isBefore(lot.earliest()) || day.isAfter(lot.useBy())) {
      return 0;
    }
    Map.Entry<LocalDate, Taken> last = of(lot).floorEntry(day);
    if (last == null) {
      return lot.pieces();
    }
    boolean today = last.getKey().equals(day) && !afterMeals;
    return lot.pieces() - (today ? last.getValue().before() : last.getValue().all());
  }

  private NavigableMap<LocalDate, Taken> of(Lot lot) {
    return byLot.getOrDefault(lot.id(), Collections.emptyNavigableMap());
  }

  /** Pieces of a lot that are never eaten. */
  public int neverEaten(Lot lot) {
    Map.Entry<LocalDate, Taken> last = of(lot).lastEntry();
    return lot.pieces() - (last == null ? 0 : last.getValue().allMeals());
  }
}
