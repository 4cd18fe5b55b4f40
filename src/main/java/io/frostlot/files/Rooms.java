package io.frostlot.files;

import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The fields {@code rooms} and {@code noFeeding} of scenario.json: when somebody feeds whom. */
final class Rooms {
  private final Map<String, FeedingDays> byName = new TreeMap<>();
  private final List<Period> away;
  private final boolean complete;

  private Rooms(JsonSchema.Checked json, Problems problems) {
    int before = problems.count();
    away = json.document().periods("noFeeding").stream().sorted(Days.BY_START).toList();
    Days.overlap(away)
        .ifPresent(
            period ->
                problems.add(
                    new Problem(
                        json.document().get("noFeeding").where(),
                        Days.text(period) + " overlapping another",
                        "periods apart",
                        "")));
    json.document().objects("rooms").forEach(room -> add(room, problems));
    complete = json.sound("rooms") && problems.count() == before;
  }

  static Rooms read(JsonSchema.Checked json, Problems problems) {
    return new Rooms(json, problems);
  }

  private void add(Json.Obj room, Problems problems) {
    String name = room.text("name");
    Set<DayOfWeek> weekdays =
        room.has("feedingWeekdays")
            ? room.texts("feedingWeekdays").stream()
                .map(DeliveryPart::weekday)
                .collect(Collectors.toSet())
            : FeedingDays.ANY.weekdays();
    if (byName.put(name, new FeedingDays(name, weekdays, away)) != null) {
      Json typed = room.get("name");
      problems.add(new Problem(typed.where(), typed.shown(), "a name that no other room has", ""));
    }
  }

  /** When the animal of a row is fed; reports a room that is not there or fed too seldom. */
  FeedingDays of(Row row) {
    String name = row.textOr("room", "");
    if (!byName.containsKey(name) && !name.isEmpty() && complete) {
      row.wrong("room", "a name of rooms in scenario.json", Nearest.hint(name, byName.keySet()));
    }
    return byName.getOrDefault(name, FeedingDays.ANY.withAway(away));
  }

  /** Reports a room that is fed more seldom than an animal in it eats. */
  static void check(Row row, FeedingDays fed, Schedule schedule) {
    int days = fed.weekdays().size();
    if (schedule.mealsInSevenDays() > days) {
      row.wrong(
          "room",
          "a room that is fed as often as the animal eats",
          fed.room() + " is fed on " + days + (days == 1 ? " day" : " days") + " a week.");
    }
  }
}
