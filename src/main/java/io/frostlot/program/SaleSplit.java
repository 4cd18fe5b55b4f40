package io.frostlot.program;

import java.util.Arrays;

/**
 * Which price step the packs under each sale are taken from, where one line has packs at several
 * steps: the split that costs least, by trying them all; a line has few steps and few sales.
 */
final class SaleSplit {
  /**
   * What packs under a sale save, by sale, step and count; in minor units or any other whole unit.
   */
  interface Saving {
    double of(int sale, int step, int packs);
  }

  private final int[] underSale;
  private final Saving saving;
  private final int[][] current;
  private int[][] best;
  private double bestSaving = Double.NEGATIVE_INFINITY;

  private SaleSplit(int[] underSale, int steps, Saving saving) {
    this.underSale = underSale;
    this.saving = saving;
    current = new int[underSale.length][steps];
    best = current;
  }

  /**
   * Packs by sale and step.
   *
   * @param atStep packs of the line at each step
   * @param underSale packs under each sale, together at most those of the line
   */
  static int[][] cheapest(int[] atStep, int[] underSale, Saving saving) {
    SaleSplit split = new SaleSplit(underSale, atStep.length, saving);
    int needed = underSale.length == 0 ? 0 : underSale[0];
    split.place(new Place(0, 0, needed), atStep.clone(), 0);
    return split.best;
  }

  private record Place(int sale, int step, int needed) {}

  private void place(Place place, int[] left, double saved) {
    if (place.sale() == underSale.length) {
      if (saved > bestSaving) {
        bestSaving = saved;
        best = Arrays.stream(current).map(int[]::clone).toArray(int[][]::new);
      }
      return;
    }
    if (place.step() == left.length) {
      if (place.needed() == 0) {
        int next = place.sale() + 1;
        place(new Place(next, 0, next < underSale.length ? underSale[next] : 0), left, saved);
      }
      return;
    }
    for (int packs = Math.min(left[place.step()], place.needed()); packs >= 0; packs--) {
      left[place.step()] -= packs;
      current[place.sale()][place.step()] = packs;
      place(
          new Place(place.sale(), place.step() + 1, place.needed() - packs),
          left,
          saved + saving.of(place.sale(), place.step(), packs));
      left[place.step()] += packs;
    }
  }
}
