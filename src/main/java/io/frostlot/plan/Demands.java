package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The meals of a world, and which of them are alike: found once, so that what is done again and
 * again takes time by kinds of meal and not by animals.
 */
public final class Demands {
  /** Meals of the planning before those of the tail, by best day. */
  public static final Comparator<Demand> CANONICAL =
      Comparator.comparing(Demand::tail)
          .thenComparing(demand -> demand.meal().days().best())
          .thenComparing(demand -> demand.meal().id());

  private final List<Demand> all;
  private final List<Alike> alike;
  private Map<String, Demand> byId = Map.of();

  private Demands(List<Demand> all, List<Alike> alike) {
    this.all = List.copyOf(all);
    this.alike = List.copyOf(alike);
  }

  /** Lists of options by number, equal ones by the same: most are the very same list as well. */
  private static final class Menus {
    private final Map<List<Option>, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<List<Option>, Integer> seen = new IdentityHashMap<>();

    int number(List<Option> options) {
      return seen.computeIfAbsent(
          options, it -> numbers.computeIfAbsent(it, other -> numbers.size()));
    }
  }

  private record Likeness(
      Meal.Days days, int options, boolean must, boolean tail, Money tailPrice) {
    static Likeness of(Demand demand, Menus menus) {
      return new Likeness(
          demand.meal().days(),
          menus.number(demand.options()),
          demand.meal().importance() == Importance.MUST,
          demand.tail(),
          demand.tailPrice());
    }
  }

  public static Demands of(List<Demand> all) {
    Map<Likeness, List<Demand>> byLikeness = new LinkedHashMap<>();
    Menus menus = new Menus();
    for (Demand demand : all) {
      byLikeness.computeIfAbsent(Likeness.of(demand, menus), some -> new ArrayList<>()).add(demand);
    }
    return new Demands(all, alike(byLikeness.values()));
  }

  private static List<Alike> alike(Collection<List<Demand>> groups) {
    return groups.stream().map(Alike::of).toList();
  }

  /** In canonical order. */
  public List<Demand> all() {
    return all;
  }

  /** Each of them once, by the first of those alike. */
  public List<Alike> alike() {
    return alike;
  }

  /** By meal id, in canonical order; found when first asked for. */
  public synchronized Map<String, Demand> byId() {
    if (byId.size() < all.size()) {
      Map<String, Demand> found = new LinkedHashMap<>();
      all.forEach(demand -> found.put(demand.meal().id(), demand));
      byId = Collections.unmodifiableMap(found);
    }
    return byId;
  }

  /** Those of the planning days. */
  public Demands withoutTail() {
    return new Demands(
        all.stream().filter(demand -> !demand.tail()).toList(),
        alike.stream().filter(some -> !some.first().tail()).toList());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Demands some && some.all.equals(all);
  }

  @Override
  public int hashCode() {
    return all.hashCode();
  }
}
