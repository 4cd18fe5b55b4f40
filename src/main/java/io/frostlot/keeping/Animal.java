package io.frostlot.keeping;

import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * One animal as the planning needs it.
 *
 * @param name unique in the collection
 * @param growth expected body mass by days after {@code weighed}
 * @param weighed day of the start mass
 * @param diet what it takes
 * @param programme when and how much
 * @param fasts periods without meals, not overlapping
 * @param present first to last day on which it is fed here
 * @param handling when it is handled; meals keep clear of that
 * @param feedingDays when somebody feeds it
 */
public record Animal(
    String name,
    Curve growth,
    LocalDate weighed,
    Diet diet,
    Programme programme,
    List<Period> fasts,
    Period present,
    List<Handling> handling,
    FeedingDays feedingDays) {

  public Animal {
    fasts = List.copyOf(fasts);
    handling = List.copyOf(handling);
  }

  /** An animal that is not handled, and fed on any day. */
  public Animal(
      String name,
      Curve growth,
      LocalDate weighed,
      Diet diet,
      Programme programme,
      List<Period> fasts,
      Period present) {
    this(name, growth, weighed, diet, programme, fasts, present, List.of(), FeedingDays.ANY);
  }

  /** The same animal under another name. */
  public Animal named(String other) {
    return new Animal(
        other, growth, weighed, diet, programme, fasts, present, handling, feedingDays);
  }

  /** The same animal where it weighed something else. */
  public Animal weighing(Grams start) {
    return new Animal(
        name, growth.from(start), weighed, diet, programme, fasts, present, handling, feedingDays);
  }

  public Animal withHandling(List<Handling> other) {
    return new Animal(name, growth, weighed, diet, programme, fasts, present, other, feedingDays);
  }

  public Animal withDiet(Diet other) {
    return new Animal(
        name, growth, weighed, other, programme, fasts, present, handling, feedingDays);
  }

  public Animal withProgramme(Programme other) {
    return new Animal(name, growth, weighed, diet, other, fasts, present, handling, feedingDays);
  }

  public Animal withFeedingDays(FeedingDays other) {
    return new Animal(name, growth, weighed, diet, programme, fasts, present, handling, other);
  }

  /**
   * What the animal takes.
   *
   * @param kinds kinds of prey accepted, at least one
   * @param largest the largest single piece it may get
   * @param mostPieces pieces per meal, at least 1
   * @param plate what it should be given of all that
   */
  public record Diet(Set<String> kinds, PieceLimit largest, int mostPieces, Plate plate) {
    /** Anything that it accepts. */
    public Diet(Set<String> kinds, PieceLimit largest, int mostPieces) {
      this(kinds, largest, mostPieces, Plate.ANY);
    }

    public Diet(Set<String> kinds, Grams largestPiece, int mostPieces) {
      this(kinds, new PieceLimit.OfGrams(largestPiece), mostPieces);
    }

    public Diet {
      kinds = Set.copyOf(kinds);
      if (kinds.isEmpty() || mostPieces < 1) {
        throw new IllegalArgumentException(
            "a diet needs a kind and a piece: " + kinds + ", " + mostPieces);
      }
    }

    public Diet withLargest(PieceLimit other) {
      return new Diet(kinds, other, mostPieces, plate);
    }

    public Diet withMostPieces(int other) {
      return new Diet(kinds, largest, other, plate);
    }

    public Diet withPlate(Plate other) {
      return new Diet(kinds, largest, mostPieces, other);
    }
  }

  /**
   * When and how much.
   *
   * @param days how far a meal may move
   */
  public record Programme(Schedule schedule, MealSize size, Importance importance, Leeway days) {
    public Programme withSize(MealSize other) {
      return new Programme(schedule, other, importance, days);
    }

    public Programme withDays(Leeway other) {
      return new Programme(schedule, size, importance, other);
    }

    /** The same with late meals that nothing limits. */
    public Programme withoutLateLimits() {
      return withLateLimits(List.of());
    }

    /** The same with other limits on late meals. */
    public Programme withLateLimits(List<Lateness> limits) {
      return withDays(new Leeway(days.early(), days.late(), limits));
    }
  }

  /**
   * Days by which a meal may come before or after its best day.
   *
   * @param limits how late all of them together should be at most
   */
  public record Leeway(int early, int late, List<Lateness> limits) {
    public static final Leeway NONE = new Leeway(0, 0);

    public Leeway(int early, int late) {
      this(early, late, List.of());
    }

    public Leeway {
      limits = List.copyOf(limits);
      if (early < 0 || late < 0) {
        throw new IllegalArgumentException("negative leeway: " + early + ", " + late);
      }
    }
  }

  /** Expected body mass on a day; before the weighing the mass then. */
  public Grams massOn(LocalDate day) {
    return growth.massAfter(Math.max(0, day.toEpochDay() - weighed.toEpochDay()));
  }

  /** Best days of its meals within a period, fasts left out. */
  public List<LocalDate> mealDays(Period within) {
    if (!within.overlaps(present)) {
      return List.of();
    }
    return programme.schedule().days(within).stream().filter(this::eatsOn).toList();
  }

  /** Is it here, and not in a fast? */
  public boolean eatsOn(LocalDate day) {
    return present.contains(day) && !Period.isAnyOn(fasts, day);
  }

  /** Has it time to digest a meal of that day before it is handled? */
  public boolean isLeftInPeaceAfter(LocalDate meal) {
    return handling.isEmpty() || handling.stream().noneMatch(it -> it.disturbs(meal));
  }
}
