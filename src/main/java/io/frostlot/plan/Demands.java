package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The meals of a world, and which of them are alike: found once, so that what is done again and
 * again takes time by kinds of meal and not by animals.
 *
 * @param all in canonical order
 * @param alike each of them once, by the first of those alike
 */
public record Demands(List<Demand> all, List<Alike> alike) {
  /** Meals of the planning before those of the tail, by best day. */
  public static final Comparator<Demand> CANONICAL =
      Comparator.comparing(Demand::tail)
          .thenComparing(demand -> demand.meal().days().best())
          .thenComparing(demand -> demand.meal().id());

  public Demands {
    all = List.copyOf(all);
    alike = List.copyOf(alike);
  }

  private record Likeness(
      Meal.Days days, List<Option> options, boolean must, boolean tail, Money tailPrice) {
    static Likeness of(Demand demand) {
      boolean must = demand.meal().importance() == Importance.MUST;
      return new Likeness(
          demand.meal().days(), demand.options(), must, demand.tail(), demand.tailPrice());
    }
  }

  public static Demands of(List<Demand> all) {
    Map<Likeness, List<Demand>> byLikeness = new LinkedHashMap<>();
    for (Demand demand : all) {
      byLikeness.computeIfAbsent(Likeness.of(demand), some -> new ArrayList<>()).add(demand);
    }
    return new Demands(all, alike(byLikeness.values()));
  }

  private static List<Alike> alike(Collection<List<Demand>> groups) {
    return groups.stream().map(Alike::of).toList();
  }

  /** Those of the planning days. */
  public Demands withoutTail() {
    return new Demands(
        all.stream().filter(demand -> !demand.tail()).toList(),
        alike.stream().filter(some -> !some.first().tail()).toList());
  }
}
