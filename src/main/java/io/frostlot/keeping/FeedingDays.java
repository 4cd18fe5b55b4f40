package io.frostlot.keeping;

import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * The days on which somebody feeds an animal: the weekdays of its room or rack, without those on
 * which its keeper is away.
 *
 * @param room shown; empty where it belongs to none
 * @param weekdays at least one
 * @param away periods in which nobody can feed
 */
public record FeedingDays(String room, Set<DayOfWeek> weekdays, List<Period> away) {
  /** Every day. */
  public static final FeedingDays ANY = new FeedingDays("", Set.of(DayOfWeek.values()), List.of());

  public FeedingDays {
    weekdays = Set.copyOf(weekdays);
    away = List.copyOf(away);
    if (weekdays.isEmpty()) {
      throw new IllegalArgumentException("no feeding weekday in " + room);
    }
  }

  public FeedingDays withAway(List<Period> periods) {
    return new FeedingDays(room, weekdays, periods);
  }

  public boolean contains(LocalDate day) {
    return isWeekday(day) && !isAway(day);
  }

  /** Is it a weekday on which the room is fed, whether or not anybody is there? */
  public boolean isWeekday(LocalDate day) {
    return weekdays.contains(day.getDayOfWeek());
  }

  public boolean isAway(LocalDate day) {
    return Period.isAnyOn(away, day);
  }
}
