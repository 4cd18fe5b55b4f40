package io.frostlot.program;

import io.frostlot.units.Period;
import java.util.Arrays;

/**
 * The days of one item, cut into intervals and these into segments (see {@link Timeline}).
 *
 * @param intervals first days, rising
 * @param segments first days, rising, a superset
 * @param last the last day of all
 */
record ItemDays(int[] intervals, int[] segments, int last) {
  /** The interval that holds a day. */
  int interval(int day) {
    return locate(intervals, day);
  }

  /** The segment that holds a day. */
  int segment(int day) {
    return locate(segments, day);
  }

  int intervalOfSegment(int segment) {
    return interval(segments[segment]);
  }

  int intervalEnd(int interval) {
    return interval + 1 < intervals.length ? intervals[interval + 1] - 1 : last;
  }

  int segmentEnd(int segment) {
    return segment + 1 < segments.length ? segments[segment + 1] - 1 : last;
  }

  /** All days of a segment. */
  Period days(int segment, Timeline timeline) {
    return new Period(
        Timeline.date(timeline.firstDayOf(segments[segment])),
        Timeline.date(timeline.firstDayOf(segmentEnd(segment) + 1) - 1));
  }

  private static int locate(int[] starts, int day) {
    int found = Arrays.binarySearch(starts, day);
    return found >= 0 ? found : -found - 2;
  }
}
