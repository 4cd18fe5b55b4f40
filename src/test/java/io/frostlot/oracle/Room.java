package io.frostlot.oracle;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import io.frostlot.storage.Freezer;

/** Does what lies in the freezers fit? In microlitres. */
final class Room {
  private final Tiny tiny;
  private final boolean endOfDay;

  Room(Tiny tiny) {
    this.tiny = tiny;
    Policy policy = tiny.world.scenario().policy();
    endOfDay = policy.freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
  }

  boolean fits(Cells cells, int day) {
    return fits(cells, day, 0, false);
  }

  /** Has a freezer less room from a day on? */
  boolean mayShrink(int day) {
    return tiny.freezers.stream()
        .flatMap(freezer -> freezer.access().limits().stream())
        .anyMatch(limit -> tiny.day(limit.days().from()) == day);
  }

  /**
   * Could the day's check still be passed after an arrival? What was there in the morning may have
   * been thrown away where the check comes before the meals; else no more can go than is eaten.
   */
  boolean mayFit(Cells cells, int day) {
    return endOfDay ? fits(cells, day, mostEaten(day), false) : fits(cells, day, 0, true);
  }

  /** Of the litres typed for a freezer and for any of its limits on the day, the least. */
  private long usable(Freezer freezer, int day) {
    long usable = freezer.usable().microlitres();
    for (Freezer.Limit limit : freezer.access().limits()) {
      if (tiny.day(limit.days().from()) <= day && day <= tiny.day(limit.days().to())) {
        usable = Math.min(usable, limit.litres().microlitres());
      }
    }
    return usable;
  }

  private boolean fits(Cells cells, int day, long more, boolean onlyNew) {
    long[] taken = new long[tiny.freezers.size()];
    long inAll = 0;
    for (int cell = 0; cell < cells.size(); cell++) {
      if (!onlyNew || cells.from(cell) > 0) {
        long room = cells.count(cell) * tiny.microlitres(cells.item(cell));
        taken[cells.freezer(cell)] += room;
        inAll += room;
      }
    }
    long usable = 0;
    for (int f = 0; f < taken.length; f++) {
      long here = usable(tiny.freezers.get(f), day);
      usable += here;
      if (taken[f] > here + more) {
        return false;
      }
    }
    return inAll <= usable + more;
  }

  /** The most room that the meals of a day can make. */
  long mostEaten(int day) {
    long eaten = 0;
    for (Demand demand : tiny.world.demands()) {
      if (demand.meal().days().contains(tiny.date(day))) {
        eaten +=
            demand.meal().count()
                * demand.options().stream()
                    .mapToLong(o -> o.pieces() * o.item().litres().microlitres())
                    .max()
                    .orElse(0);
      }
    }
    return eaten;
  }
}
