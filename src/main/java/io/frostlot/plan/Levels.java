package io.frostlot.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many pieces of each lot of a plan are there, day by day. */
public final class Levels {
  private final Map<String, List<Change>> changes = new HashMap<>();

  private record Change(LocalDate day, int pieces, boolean atMeals) {}

  public Levels(Plan plan) {
    for (Feeding feeding : plan.feedings()) {
      for (Feeding.Draw draw : feeding.draws()) {
        add(draw.lotId(), new Change(feeding.day(), draw.pieces(), true));
      }
    }
    for (Discard discard : plan.discards()) {
      add(discard.lotId(), new Change(discard.day(), discard.pieces(), false));
    }
  }

  private void add(String lotId, Change change) {
    changes.computeIfAbsent(lotId, id -> new ArrayList<>()).add(change);
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
    int left = lot.pieces();
    for (Change change : changes.getOrDefault(lot.id(), List.of())) {
      boolean done =
          change.day().isBefore(day)
              || (change.day().equals(day) && (afterMeals || !change.atMeals()));
      left -= done ? change.pieces() : 0;
    }
    return left;
  }

  /** Pieces of a lot that are never eaten. */
  public int neverEaten(Lot lot) {
    return lot.pieces()
        - changes.getOrDefault(lot.id(), List.of()).stream()
            .filter(Change::atMeals)
            .mapToInt(Change::pieces)
            .sum();
  }
}
