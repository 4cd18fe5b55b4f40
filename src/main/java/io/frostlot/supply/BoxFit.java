package io.frostlot.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts whole packs into the fewest boxes, all limits of a box at once.
 *
 * <p>First fit by falling size gives a packing; depth-first search then looks for one with fewer
 * boxes, from the lower bound up, trying only boxes that differ. Exact up to {@link #MOST_STEPS}
 * placings, far beyond what one order holds; past that the fewest found.
 */
public final class BoxFit {
  private static final long MOST_STEPS = 3_000_000;
  private final long[] limits;
  private final List<Pack> packs;
  private final long[][] sizes;
  private long steps;

  private BoxFit(Map<Pack, Integer> counts, Boxing.Limits limits) {
    this.limits = sizes(limits);
    packs = new ArrayList<>();
    counts.keySet().stream()
        .sorted(
            Comparator.comparingDouble((Pack pack) -> -share(pack, limits)).thenComparing(Pack::id))
        .forEach(
            pack -> {
              for (int i = 0; i < counts.get(pack); i++) {
                packs.add(pack);
              }
            });
    sizes = packs.stream().map(BoxFit::sizes).toArray(long[][]::new);
  }

  /** Milligrams, microlitres and pieces that a box holds. */
  public static long[] sizes(Boxing.Limits limits) {
    return new long[] {limits.grams().milligrams(), limits.litres().microlitres(), limits.pieces()};
  }

  /** Milligrams, microlitres and pieces of a pack. */
  public static long[] sizes(Pack pack) {
    return new long[] {
      pack.packed().grams().milligrams(), pack.packed().litres().microlitres(), pack.pieces()
    };
  }

  /** The part of a box that a pack takes, by the limit that it comes nearest to. */
  public static double share(Pack pack, Boxing.Limits limits) {
    long[] size = sizes(pack);
    long[] limit = sizes(limits);
    double most = 0;
    for (int d = 0; d < limit.length; d++) {
      most = Math.max(most, (double) size[d] / limit[d]);
    }
    return most;
  }

  /** Does a pack fit into an empty box? */
  public static boolean fits(Pack pack, Boxing.Limits limits) {
    long[] size = sizes(pack);
    long[] limit = sizes(limits);
    return size[0] <= limit[0] && size[1] <= limit[1] && size[2] <= limit[2];
  }

  /**
   * The packs of each box, fewest boxes; throws IllegalArgumentException where one fits into none.
   *
   * @param counts packs of each row, positive
   */
  public static List<Map<Pack, Integer>> pack(Map<Pack, Integer> counts, Boxing.Limits limits) {
    counts
        .keySet()
        .forEach(
            pack -> {
              if (!fits(pack, limits)) {
                throw new IllegalArgumentException(pack.id() + " fits into no box");
              }
            });
    BoxFit fit = new BoxFit(counts, limits);
    int[] boxOf = fit.firstFit();
    int boxes = count(boxOf);
    for (int fewer = leastByTotals(counts, limits); fewer < boxes; fewer++) {
      Optional<int[]> found = fit.into(fewer);
      if (found.isPresent()) {
        boxOf = found.get();
        break;
      }
    }
    return fit.contents(boxOf);
  }

  /** Boxes that the totals of packs fill by each limit, at least 1; none where there are none. */
  public static int leastByTotals(Map<Pack, Integer> counts, Boxing.Limits limits) {
    long[] limit = sizes(limits);
    long least = counts.isEmpty() ? 0 : 1;
    for (int d = 0; d < limit.length; d++) {
      long total = 0;
      for (Map.Entry<Pack, Integer> some : counts.entrySet()) {
        total += some.getValue() * sizes(some.getKey())[d];
      }
      least = Math.max(least, total / limit[d] + (total % limit[d] == 0 ? 0 : 1));
    }
    return (int) least;
  }

  private static int count(int[] boxOf) {
    int most = -1;
    for (int box : boxOf) {
      most = Math.max(most, box);
    }
    return most + 1;
  }

  private int[] firstFit() {
    int[] boxOf = new int[sizes.length];
    long[][] free = new long[sizes.length][];
    for (int i = 0; i < sizes.length; i++) {
      int box = 0;
      while (free[box] != null && !hasRoom(free[box], sizes[i])) {
        box++;
      }
      if (free[box] == null) {
        free[box] = limits.clone();
      }
      take(free[box], sizes[i], 1);
      boxOf[i] = box;
    }
    return boxOf;
  }

  private Optional<int[]> into(int boxes) {
    long[][] free = new long[boxes][];
    for (int b = 0; b < boxes; b++) {
      free[b] = limits.clone();
    }
    int[] boxOf = new int[sizes.length];
    return place(0, free, boxOf) ? Optional.of(boxOf) : Optional.empty();
  }

  private boolean place(int next, long[][] free, int[] boxOf) {
    if (next == sizes.length) {
      return true;
    }
    boolean same = next > 0 && packs.get(next).equals(packs.get(next - 1));
    for (int b = same ? boxOf[next - 1] : 0; b < free.length && steps < MOST_STEPS; b++) {
      if (hasRoom(free[b], sizes[next]) && !seenBefore(free, b)) {
        steps++;
        take(free[b], sizes[next], 1);
        boxOf[next] = b;
        if (place(next + 1, free, boxOf)) {
          return true;
        }
        take(free[b], sizes[next], -1);
      }
    }
    return false;
  }

  /** Empty boxes are alike: only the first is tried. */
  private boolean seenBefore(long[][] free, int box) {
    return box > 0 && Arrays.equals(free[box], limits) && Arrays.equals(free[box - 1], limits);
  }

  private static boolean hasRoom(long[] free, long[] size) {
    return size[0] <= free[0] && size[1] <= free[1] && size[2] <= free[2];
  }

  private static void take(long[] free, long[] size, int sign) {
    for (int d = 0; d < free.length; d++) {
      free[d] -= sign * size[d];
    }
  }

  private List<Map<Pack, Integer>> contents(int[] boxOf) {
    List<Map<Pack, Integer>> boxes = new ArrayList<>();
    for (int b = 0; b < count(boxOf); b++) {
      boxes.add(new LinkedHashMap<>());
    }
    for (int i = 0; i < boxOf.length; i++) {
      boxes.get(boxOf[i]).merge(packs.get(i), 1, Integer::sum);
    }
    return boxes;
  }
}
