package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;

/**
 * How prey may be moved: a lot as a whole or in parts, once, on one of the moving days, after the
 * day by which it has surely come, between two freezers of its keeper that are in use.
 */
public final class Moving {
  private final World world;
  private final List<LocalDate> days;

  public Moving(World world) {
    this.world = world;
    int every = world.scenario().policy().moves().everyDays();
    LocalDate first = world.scenario().planning().from();
    LocalDate end = world.scenario().planning().to().plusDays(1);
    long inUse = world.scenario().larder().freezers().stream().filter(Freezer::inUse).count();
    days =
        every == 0 || inUse < 2 ? List.of() : first.datesUntil(end, Period.ofDays(every)).toList();
  }

  /** In order; none where nothing may be moved. */
  public List<LocalDate> days() {
    return days;
  }

  /** What a lot that stays where it is may become by being moved. */
  public List<Lot> of(Lot lot) {
    Freezer from = world.freezer(lot.freezer());
    List<Lot> moved = new ArrayList<>();
    if (days.isEmpty() || !from.inUse()) {
      return moved;
    }
    Keeps there = world.keeps(lot);
    for (Freezer into : world.scenario().larder().freezers()) {
      if (into.inUse() && !into.equals(from) && isOneKeepers(from, into)) {
        for (LocalDate day : days) {
          Keeps here = into.keepsMoved(lot.item(), from, there, day);
          if (isThere(lot, day) && !here.useBy().isBefore(day)) {
            moved.add(lot.movedInto(into.name(), day, here.useBy()));
          }
        }
      }
    }
    return moved;
  }

  private boolean isOneKeepers(Freezer one, Freezer other) {
    return world.joint().keeperOf(one).equals(world.joint().keeperOf(other));
  }

  /** At the start of a day. */
  private static boolean isThere(Lot lot, LocalDate day) {
    boolean came = lot.origin() instanceof Lot.InHand || lot.latest().isBefore(day);
    return came && !lot.useBy().isBefore(day);
  }
}
