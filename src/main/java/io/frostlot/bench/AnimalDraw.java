package io.frostlot.bench;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.PieceLimit;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Draws the animals: 40 % (of a member of a group 25 %, and none so small) growing and fed weekly,
 * the others fed every two to four weeks, on two feeding weekdays (on all seven, with leeways of
 * their own, where the room is varied). A tenth must eat, a fifth may skip; a tenth of the adults
 * fast for six weeks, one in twenty leaves.
 */
final class AnimalDraw {
  private static final Animal.Leeway USUAL = new Animal.Leeway(0, 3);
  private static final List<Animal.Leeway> VARIED =
      List.of(USUAL, new Animal.Leeway(1, 2), new Animal.Leeway(2, 5));
  private final RoomSize size;
  private final Chance chance;
  private final Period planning;

  AnimalDraw(RoomSize size, Chance chance, Period planning) {
    this.size = size;
    this.chance = chance;
    this.planning = planning;
  }

  List<Animal> animals() {
    int growing = (int) Math.round(size.growing() * size.animals());
    List<Animal> animals = new ArrayList<>();
    for (int i = 0; i < size.animals(); i++) {
      animals.add(animal(String.format(Locale.ROOT, "animal %05d", i + 1), i < growing));
    }
    return animals;
  }

  private Animal animal(String name, boolean grows) {
    int least = size == RoomSize.MEMBER ? 4 : grows ? 1 : 3;
    int step = chance.between(least, grows ? 5 : 12);
    double mass = Prey.massG(step) * chance.between(1.02, 1.4);
    int adultStep = grows ? Math.min(12, step + chance.between(3, 6)) : step;
    double adult = grows ? Prey.massG(adultStep) * 1.2 : mass;
    Curve curve =
        grows
            ? new Curve.Logistic(Grams.of(mass), Grams.of(adult), chance.between(0.006, 0.012))
            : new Curve.Constant(Grams.of(mass));
    int interval = grows ? 7 : chance.oneOf(List.of(14, 14, 14, 21, 28));
    int weekday = size.varied() ? chance.between(0, 6) : chance.oneOf(List.of(2, 6));
    LocalDate first = planning.from().plusDays(weekday + 7L * chance.between(0, interval / 7 - 1));
    return new Animal(
        name,
        curve,
        planning.from(),
        new Animal.Diet(
            kinds(adultStep, grows),
            new PieceLimit.ShareOfMass(Percent.of("14")),
            chance.in(0.5) ? 2 : 1),
        new Animal.Programme(
            new Schedule.Every(interval, first),
            Prey.table(),
            importance(),
            size.varied() ? chance.oneOf(VARIED) : USUAL),
        !grows && chance.in(0.1) ? List.of(fast()) : List.of(),
        chance.in(0.05) ? new Period(planning.from(), someDay()) : Period.ALWAYS);
  }

  private Set<String> kinds(int adultStep, boolean grows) {
    boolean both = grows || chance.in(0.4);
    return both ? Set.of("mouse", "rat") : Set.of(adultStep < 8 ? "mouse" : "rat");
  }

  private Importance importance() {
    return chance.in(0.1)
        ? Importance.MUST
        : chance.in(0.2) ? Importance.MAY_SKIP : Importance.MAY_SLIDE;
  }

  private Period fast() {
    LocalDate from = someDay();
    return new Period(from, from.plusDays(41));
  }

  private LocalDate someDay() {
    return planning.from().plusWeeks(chance.between(size.weeks() / 3, size.weeks()));
  }
}
