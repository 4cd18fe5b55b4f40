package io.frostlot.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What lies in freezers when so much of each item is eaten on each day, what goes past its use-by
 * first taken first. Items, freezers and days are numbers, days counted from the first.
 */
final class StockLevels {
  private final List<List<Batch>> batches = new ArrayList<>();
  private final int[] checkDays;
  private final double[][] room;
  private final double[][] used;

  /**
   * Pieces that came together.
   *
   * @param from first day on which they can be eaten
   * @param until last day
   * @param place where they lie
   */
  record Batch(int pieces, int from, int until, Place place, List<Thrown> thrown) {
    boolean isThere(int day) {
      return from <= day && day <= until;
    }

    boolean takesRoom(int day) {
      return place.from() <= day && day <= until;
    }
  }

  /**
   * Where pieces lie.
   *
   * @param from takes room from this day
   * @param litres of one piece
   */
  record Place(int freezer, int from, double litres) {}

  /** Pieces thrown away at the start of a day, as far as they are there. */
  record Thrown(int day, int pieces) {}

  /**
   * Nothing is eaten yet, and nothing counted.
   *
   * @param checkDays days on which freezers are checked
   * @param room litres of each freezer on each of them
   */
  StockLevels(List<List<Batch>> byItem, int[] checkDays, double[][] room) {
    for (List<Batch> some : byItem) {
      batches.add(some.stream().sorted(Comparator.comparing(Batch::until)).toList());
    }
    this.checkDays = checkDays.clone();
    this.room = room.clone();
    used = new double[room.length][checkDays.length];
  }

  int items() {
    return batches.size();
  }

  /**
   * The pieces of each batch of an item that lie in its freezer on each day of checks; empty where
   * there are too few to eat.
   *
   * @param eaten by day
   */
  Optional<int[][]> levels(int item, int[] eaten) {
    List<Batch> lots = batches.get(item);
    int[] left = lots.stream().mapToInt(Batch::pieces).toArray();
    int[][] levels = new int[left.length][checkDays.length];
    int check = 0;
    for (int day = 0; day < eaten.length; day++) {
      throwAway(lots, day, left);
      for (; check < checkDays.length && checkDays[check] == day; check++) {
        for (int lot = 0; lot < left.length; lot++) {
          levels[lot][check] = lots.get(lot).takesRoom(day) ? left[lot] : 0;
        }
      }
      int needed = eaten[day];
      for (int lot = 0; lot < left.length && needed > 0; lot++) {
        int taken = lots.get(lot).isThere(day) ? Math.min(needed, left[lot]) : 0;
        left[lot] -= taken;
        needed -= taken;
      }
      if (needed > 0) {
        return Optional.empty();
      }
    }
    return Optional.of(levels);
  }

  private static void throwAway(List<Batch> lots, int day, int[] left) {
    for (int lot = 0; lot < left.length; lot++) {
      for (Thrown thrown : lots.get(lot).thrown()) {
        left[lot] -= thrown.day() == day ? Math.min(left[lot], thrown.pieces()) : 0;
      }
    }
  }

  /** Counts the levels of an item, or takes them away again. */
  void count(int item, int[][] levels, int times) {
    for (int lot = 0; lot < levels.length; lot++) {
      Place place = batches.get(item).get(lot).place();
      for (int check = 0; check < checkDays.length; check++) {
        used[place.freezer()][check] += times * place.litres() * levels[lot][check];
      }
    }
  }

  /** Litres that freezers lack, over all days of checks. */
  double lacking() {
    double lacking = 0;
    for (int freezer = 0; freezer < used.length; freezer++) {
      for (int check = 0; check < checkDays.length; check++) {
        lacking += Math.max(0, used[freezer][check] - room[freezer][check]);
      }
    }
    return lacking;
  }
}
