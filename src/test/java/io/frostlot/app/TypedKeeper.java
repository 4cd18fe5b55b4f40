package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Plate;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a random keeper types of two animals that eat every four days, of twelve days on which a
 * shop may be open, and of two small freezers; as rows of files, and as what it means by the
 * README.
 *
 * @param sealed does the keeper seal prey from food?
 * @param fed weekdays on which the rack of the second animal is fed
 * @param noFeeding nobody feeds then; may be none, like the days away
 */
record TypedKeeper(
    List<TypedFreezer> freezers,
    boolean sealed,
    List<TypedEvent> events,
    Set<DayOfWeek> fed,
    List<Period> noFeeding,
    List<Period> away,
    TypedHabits habits) {
  static final LocalDate FIRST = LocalDate.of(2031, 1, 6);

  /** Days and half litres of room on these, of the half litres of room on others. */
  record TypedFreezer(
      String name, int halves, boolean inUse, boolean food, List<Freezer.Limit> limits) {}

  /**
   * Handling.
   *
   * @param animal empty for all
   */
  record TypedEvent(Period days, String animal) {}

  /**
   * How the animals eat.
   *
   * @param late days by which a meal may be late
   * @param lastGrams of the mouse that the first animal had last, of which it never changes; 0: any
   */
  record TypedHabits(int late, int lastGrams) {}

  static TypedKeeper of(Random random) {
    List<TypedFreezer> freezers = new ArrayList<>();
    freezers.add(freezer(random, "A", 2, true));
    freezers.add(freezer(random, "B", 1, random.nextInt(4) > 0));
    List<TypedEvent> events = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      events.add(new TypedEvent(period(random, 2), random.nextBoolean() ? "" : "Bay"));
    }
    Set<DayOfWeek> fed = new TreeSet<>();
    while (fed.size() < 3) {
      fed.add(DayOfWeek.of(1 + random.nextInt(7)));
    }
    return new TypedKeeper(
        freezers,
        random.nextBoolean(),
        events,
        fed,
        random.nextBoolean() ? List.of(period(random, 3)) : List.of(),
        random.nextBoolean() ? List.of(period(random, 3)) : List.of(),
        new TypedHabits(random.nextInt(3), List.of(0, 7, 12, 20, 40).get(random.nextInt(5))));
  }

  private static TypedFreezer freezer(Random random, String name, int least, boolean inUse) {
    int halves = least + random.nextInt(2);
    List<Freezer.Limit> limits = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      limits.add(new Freezer.Limit(period(random, 3), litres(random.nextInt(halves))));
    }
    return new TypedFreezer(name, halves, inUse, random.nextBoolean(), limits);
  }

  private static Period period(Random random, int most) {
    LocalDate from = FIRST.plusDays(random.nextInt(12));
    return new Period(from, from.plusDays(random.nextInt(most)));
  }

  private static Litres litres(int halves) {
    return new Litres(halves * 500_000L);
  }

  String scenarioJson() {
    return """
        {"name": "As typed", "from": "%s", "planningDays": 12, "place": "XF", "currency": "EUR",
         "suppliers": ["shop"], "away": [%s], "noFeeding": [%s],
         "rooms": [{"name": "rack", "feedingWeekdays": [%s]}],
         "policy": {"endValue": "none", "adequacy": {"asked": false}, "preySealedFromFood": %s,
          "charges": {"perOrder": 0.3, "perDeliveryDay": 0, "lateMealPerDay": 0.05}}}
        """
        .formatted(
            FIRST,
            quoted(away),
            quoted(noFeeding),
            fed.stream().map(day -> '"' + word(day) + '"').collect(Collectors.joining(", ")),
            sealed);
  }

  private static String word(DayOfWeek day) {
    return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  private static String quoted(List<Period> periods) {
    return periods.stream().map(it -> '"' + text(it) + '"').collect(Collectors.joining(", "));
  }

  private static String text(Period period) {
    return period.from() + "/" + period.to();
  }

  String animalsCsv() {
    String row = "%s,200,2031-01-01,4,2031-01-0%d,20,50,150,26,mouse,2,may-slide,%d,%s%n";
    String last = habits.lastGrams() == 0 ? ",," : "never,mouse," + habits.lastGrams();
    return "name,mass_g,weighed,every_days,next_meal,meal_g,meal_least_percent,meal_most_percent,"
        + "largest_piece_g,kinds,most_pieces,importance,late_days,room,changes,last_kind,last_piece_g\n"
        + row.formatted("Ash", 7, habits.late(), "," + last)
        + row.formatted("Bay", 8, habits.late(), "rack,,,");
  }

  String eventsCsv() {
    return "days,animal,what\n"
        + events.stream()
            .map(event -> text(event.days()) + "," + event.animal() + ",show\n")
            .collect(Collectors.joining());
  }

  String freezersCsv() {
    StringBuilder rows = new StringBuilder("name,usable_litres,kind,life_days,in_use,holds_food\n");
    for (TypedFreezer freezer : freezers) {
      rows.append(freezer.name()).append(',').append(freezer.halves() / 2.0).append(",deep,9,");
      rows.append(freezer.inUse() ? "yes," : "no,").append(freezer.food() ? "yes\n" : "no\n");
    }
    return rows.toString();
  }

  String limitsCsv() {
    StringBuilder rows = new StringBuilder("freezer,days,litres\n");
    for (TypedFreezer freezer : freezers) {
      for (Freezer.Limit limit : freezer.limits()) {
        rows.append(freezer.name()).append(',').append(text(limit.days())).append(',');
        rows.append(limit.litres().microlitres() / 1_000_000.0).append('\n');
      }
    }
    return rows.toString();
  }

  /** What all of this means, with the suppliers and the policy of a scenario. */
  Scenario means(Scenario read) {
    List<Freezer> own = new ArrayList<>();
    for (TypedFreezer freezer : freezers) {
      boolean used = freezer.inUse() && (sealed || !freezer.food());
      Freezer.Company beside = freezer.food() ? Freezer.Company.FOOD : Freezer.Company.NONE;
      own.add(
          new Freezer(
              freezer.name(),
              litres(freezer.halves()),
              "deep",
              Freezer.Life.of(9),
              new Freezer.Access(used, beside, freezer.limits())));
    }
    Plate plate =
        habits.lastGrams() == 0
            ? Plate.ANY
            : new Plate(
                new TreeMap<>(),
                new Plate.Never(SizeBand.of("mouse", Grams.of(habits.lastGrams()))));
    return new Scenario(
        read.name(),
        new Period(FIRST, FIRST.plusDays(11)),
        read.currency(),
        new Scenario.Collection(
            List.of(
                animal("Ash", 1, plate, new FeedingDays("", FeedingDays.ANY.weekdays(), noFeeding)),
                animal("Bay", 2, Plate.ANY, new FeedingDays("rack", fed, noFeeding))),
            List.of()),
        new Scenario.Larder(own, List.of(), List.of()),
        read.suppliers(),
        away,
        read.policy());
  }

  private Animal animal(String name, int first, Plate plate, FeedingDays days) {
    MealSize.Tolerance tolerance = new MealSize.Tolerance(Percent.of("50"), Percent.of("150"));
    Animal.Diet diet = new Animal.Diet(Set.of("mouse"), Grams.of(26), 2);
    return new Animal(
            name,
            new Curve.Constant(Grams.of(200)),
            LocalDate.of(2031, 1, 1),
            diet.withPlate(plate),
            new Animal.Programme(
                new Schedule.Every(4, FIRST.plusDays(first)),
                new MealSize.Fixed(Grams.of(20), tolerance),
                Importance.MAY_SLIDE,
                new Animal.Leeway(0, habits.late())),
            List.of(),
            Period.ALWAYS)
        .withFeedingDays(days)
        .withHandling(
            events.stream()
                .filter(event -> event.animal().isEmpty() || event.animal().equals(name))
                .map(event -> new Handling(event.days(), "show"))
                .toList());
  }
}
