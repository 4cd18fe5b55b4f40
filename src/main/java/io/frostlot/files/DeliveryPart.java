package io.frostlot.files;

import io.frostlot.supply.Delivery;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The field {@code delivery} of a profile. */
final class DeliveryPart {
  private static final Map<String, String> FIELDS_OF =
      Map.of("carrier", "shipWeekdays", "shop", "openWeekdays", "show", "dates");
  private final Json.Obj delivery;
  private final Problems problems;

  DeliveryPart(Json.Obj root, Problems problems) {
    this.delivery = root.object("delivery");
    this.problems = problems;
  }

  /** Empty where there was a problem; for a carrier also where there is no rate. */
  Optional<Delivery> read(Optional<Json.Obj> rate) {
    String by = delivery.text("by");
    FIELDS_OF.values().stream()
        .filter(name -> delivery.has(name) && !FIELDS_OF.get(by).equals(name))
        .sorted()
        .forEach(name -> refuse(delivery.get(name), "a field " + Problem.quote(name), "none with " + by));
    Delivery.Lead lead = lead();
    if (by.equals("shop")) {
      return Optional.of(new Delivery.Shop(lead, weekdays("openWeekdays")));
    }
    if (by.equals("carrier")) {
      return rate.flatMap(this::transit)
          .map(transit -> new Delivery.Shipped(lead, weekdays("shipWeekdays"), transit));
    }
    if (!delivery.has("dates")) {
      refuse(delivery, "no field \"dates\"", "the days of the show");
      return Optional.empty();
    }
    List<LocalDate> dates = delivery.texts("dates").stream().map(LocalDate::parse).toList();
    return Optional.of(new Delivery.Show(lead, dates));
  }

  private Delivery.Lead lead() {
    return new Delivery.Lead(
        delivery.integer("leadDays"),
        delivery.text("leadCounts").equals("shop-days"),
        delivery.integer("bookAheadDays"),
        delivery.periods("closed").stream().sorted(Days.BY_START).toList());
  }

  private Set<DayOfWeek> weekdays(String field) {
    return delivery.has(field)
        ? delivery.texts(field).stream().map(DeliveryPart::weekday).collect(Collectors.toSet())
        : Set.of(DayOfWeek.values());
  }

  /** The weekday that {@code mon} to {@code sun} stand for. */
  static DayOfWeek weekday(String word) {
    return Arrays.stream(DayOfWeek.values())
        .filter(day -> day.name().startsWith(word.toUpperCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow();
  }

  private Optional<Delivery.Transit> transit(Json.Obj rate) {
    int earliest = rate.integer("transitEarliestDays");
    int latest = rate.has("transitLatestDays") ? rate.integer("transitLatestDays") : earliest;
    if (latest < earliest) {
      Json typed = rate.get("transitLatestDays");
      refuse(typed, typed.shown(), "at least transitEarliestDays, " + earliest);
      return Optional.empty();
    }
    return Optional.of(new Delivery.Transit(earliest, latest));
  }

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
