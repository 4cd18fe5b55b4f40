package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import java.util.Optional;

/** Meals that are alike and wait to be fed together; fewer as they are. */
final class Portion {
  private final Alike alike;
  private int meals;
  private Optional<Option> promised = Optional.empty();

  Portion(Alike alike, int meals) {
    this.alike = alike;
    this.meals = meals;
  }

  Alike alike() {
    return alike;
  }

  int meals() {
    return meals;
  }

  Meal.Days days() {
    return alike.first().meal().days();
  }

  int best() {
    return Timeline.day(days().best());
  }

  int latest() {
    return Timeline.day(days().latest());
  }

  boolean isMust() {
    return alike.isMust();
  }

  boolean isOfTail() {
    return alike.first().tail();
  }

  /** What is there or coming for them. */
  Optional<Option> promised() {
    return promised;
  }

  void promise(Option option) {
    promised = Optional.of(option);
  }

  void forget() {
    promised = Optional.empty();
  }

  /** Some of them, that are part of it no more. */
  Portion split(int some) {
    meals -= some;
    return new Portion(alike, some);
  }

  void fed(int some) {
    meals -= some;
  }
}
