package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Room that prey takes on each day of checks, and that there is: in each freezer, by number, and
 * after them where the host keeps what others have not collected.
 */
final class RoomTaken {
  private final long[][] room;
  private final long[][] used;
  private long tooMuch;

  /** Nothing lies anywhere. */
  RoomTaken(World world, LookDays look) {
    List<Freezer> freezers = world.scenario().larder().freezers();
    Joint.Collecting collecting = world.joint().collecting();
    room =
        Stream.concat(
                freezers.stream()
                    .map(
                        freezer ->
                            IntStream.of(look.checks())
                                .mapToLong(day -> freezer.usableOn(look.date(day)).microlitres())),
                Stream.of(
                    IntStream.of(look.checks())
                        .mapToLong(day -> collecting.waiting().room().microlitres())))
            .map(LongStream::toArray)
            .toArray(long[][]::new);
    used = new long[room.length][look.checks().length];
  }

  /** Freezers, and where others' pieces wait. */
  static int places(World world) {
    return world.scenario().larder().freezers().size() + 1;
  }

  /** Microlitres that are lacking, over all places and days of checks. */
  long tooMuch() {
    return tooMuch;
  }

  /** Pieces lie there, or no longer. */
  void add(ItemStock.Course course, long microlitresEach) {
    int[] checks = course.on().checks();
    for (int c = 0; c < checks.length; c++) {
      for (int place = 0; place < used.length; place++) {
        int pieces = course.lying()[place][c];
        if (pieces != 0) {
          long most = room[place][checks[c]];
          tooMuch -= Math.max(0, used[place][checks[c]] - most);
          used[place][checks[c]] += pieces * microlitresEach;
          tooMuch += Math.max(0, used[place][checks[c]] - most);
        }
      }
    }
  }
}
