package io.frostlot.keeping;

import io.frostlot.units.Percent;
import io.frostlot.units.SizeBand;
import java.util.Collections;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What should be on an animal's plate, of all that it accepts.
 *
 * @param largestShares of its meals in eight weeks, by kind; no limit for kinds that are left out
 * @param change how it takes to another kind or size
 */
public record Plate(SortedMap<String, Percent> largestShares, Change change) {
  /** Anything that it accepts. */
  public static final Plate ANY = new Plate(new TreeMap<>(), new Free());

  public Plate {
    largestShares = Collections.unmodifiableSortedMap(new TreeMap<>(largestShares));
  }

  /** How an animal takes to another kind or size than it had before. */
  public sealed interface Change {
    /** What it took last before the planning days; at most one. */
    default Set<SizeBand> before() {
      return Set.of();
    }
  }

  /** It takes anything. */
  public record Free() implements Change {}

  /** It should keep to what it has, as long as that would do. */
  public record Keep(Set<SizeBand> before) implements Change {
    public Keep {
      before = Set.copyOf(before);
    }
  }

  /**
   * It should change at most once in some meals in a row.
   *
   * @param meals at least 1
   */
  public record Seldom(int meals, Set<SizeBand> before) implements Change {
    public Seldom {
      before = Set.copyOf(before);
      if (meals < 1) {
        throw new IllegalArgumentException("a change in " + meals + " meals");
      }
    }
  }

  /** It takes nothing else, or the next size of its kind where that would not do. */
  public record Never(SizeBand kept) implements Change {
    @Override
    public Set<SizeBand> before() {
      return Set.of(kept);
    }
  }

  /** Sizes of which one must be kept to; none where any will do. */
  public Set<SizeBand> kept() {
    return change instanceof Never ? change.before() : Set.of();
  }
}
