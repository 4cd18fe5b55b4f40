package io.frostlot.bench;

import io.frostlot.keeping.MealSize;
import io.frostlot.units.Grams;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What animals of a drawn room are given: one table of meals by body mass, about 7 to 10 % of it,
 * and the pieces that are sold, each about half as heavy again as the one before.
 */
final class Prey {
  private static final int STEPS = 13;
  private static final double FIRST_G = 2;
  private static final double RATIO = 1.45;
  private static final double SHARE = 0.10;
  private static final Map<String, List<Double>> PIECES =
      Map.of(
          "mouse",
          List.of(2.2, 3.4, 5.2, 8.0, 12.0, 18.0, 27.0, 38.0),
          "rat",
          List.of(6.0, 10.0, 16.0, 25.0, 38.0, 58.0, 85.0, 125.0, 185.0, 250.0));

  /** Fewer sizes, each 1.6 times as heavy as the one before. */
  private static final Map<String, List<Double>> FEW_PIECES =
      Map.of(
          "mouse",
          List.of(2.7, 4.3, 6.9, 11.0, 17.6, 28.0),
          "rat",
          List.of(17.6, 28.0, 45.0, 72.0, 115.0, 184.0));

  private Prey() {}

  /** Mean grams of the pieces of a kind that there are. */
  static List<Double> pieces(RoomSize size, String kind) {
    return (size == RoomSize.MEMBER ? FEW_PIECES : PIECES).get(kind);
  }

  /** Target grams of a step of the table. */
  static double mealG(int step) {
    return FIRST_G * Math.pow(RATIO, step);
  }

  /** The least body mass of a step. */
  static double massG(int step) {
    return mealG(step) / SHARE;
  }

  static MealSize table() {
    List<MealSize.ByMass.Step> steps = new ArrayList<>();
    for (int j = 0; j < STEPS; j++) {
      double meal = mealG(j);
      steps.add(
          new MealSize.ByMass.Step(
              Grams.of(massG(j)), Grams.of(0.75 * meal), Grams.of(1.3 * meal)));
    }
    return new MealSize.ByMass(steps);
  }

  /** About what a piece costs, in money. */
  static double price(double grams) {
    return 0.35 + 0.016 * grams;
  }

  /** Pieces in the smaller pack of a small room. */
  static int packCount(double grams) {
    return grams < 15 ? 25 : grams < 60 ? 10 : 5;
  }
}
