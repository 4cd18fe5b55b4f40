package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Amber eats on Fridays, up to three days late: Friday 10 January to Monday 13 January first. */
class MovedMealTest {
  private static MovedMeal.Reason first(Set<DayOfWeek> weekdays, String from, String to) {
    Scenario scenario = HandmadeRoom.world().scenario();
    Period away = new Period(LocalDate.parse(from), LocalDate.parse(to));
    Animal amber =
        scenario
            .collection()
            .animals()
            .get(0)
            .withFeedingDays(new FeedingDays("rack", weekdays, List.of(away)));
    return MovedMeal.of(scenario.withAnimals(List.of(amber))).get(0).reason();
  }

  @Test
  void where_the_room_and_the_keeper_leave_no_day_both_are_named() {
    assertThat(first(Set.of(DayOfWeek.SATURDAY), "2031-01-11", "2031-01-11"))
        .isEqualTo(new MovedMeal.Reason(MovedMeal.Cause.ROOM_AND_KEEPER, "rack"));
    assertThat(first(Set.of(DayOfWeek.FRIDAY), "2031-01-10", "2031-01-10"))
        .isEqualTo(new MovedMeal.Reason(MovedMeal.Cause.ROOM_AND_KEEPER, "rack"));
  }

  @Test
  void where_one_of_them_is_enough_only_that_is_named() {
    assertThat(first(Set.of(DayOfWeek.SATURDAY), "2031-02-20", "2031-02-20"))
        .isEqualTo(new MovedMeal.Reason(MovedMeal.Cause.ROOM_NOT_FED, "rack"));
    assertThat(first(Set.of(DayOfWeek.values()), "2031-01-10", "2031-01-13"))
        .isEqualTo(new MovedMeal.Reason(MovedMeal.Cause.KEEPER_AWAY, ""));
  }
}
