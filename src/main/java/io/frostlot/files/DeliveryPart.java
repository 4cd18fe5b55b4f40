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

  boolean isByCarrier() {
    return delivery.text("by").equals("carrier");
  }

  Delivery carried(Delivery.Transit transit) {
    checkFields("carrier");
    return new Delivery.Shipped(lead(), weekdays("shipWeekdays"), transit);
  }

  /** By shop or show; empty with a problem added. */
  Optional<Delivery> fetched() {
    String by = delivery.text("by");
    checkFields(by);
    if (by.equals("shop")) {
      return Optional.of(new Delivery.Shop(lead(), weekdays("openWeekdays")));
    }
    if (!delivery.has("dates")) {
      refuse(delivery, "no field \"dates\"", "the days of the show");
      return Optional.empty();
    }
    List<LocalDate> dates = delivery.texts("dates").stream().map(LocalDate::parse).toList();
    return Optional.of(new Delivery.Show(lead(), dates));
  }

  private void checkFields(String by) {
    FIELDS_OF.values().stream()
        .filter(name -> delivery.has(name) && !FIELDS_OF.get(by).equals(name))
        .sorted()
        .forEach(
            name ->
                refuse(delivery.get(name), "a field " + Problem.quote(name), "none with " + by));
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

  private void refuse(Json at, String found, String expected) {
    problems.add(new Problem(at.where(), found, expected, ""));
  }
}
