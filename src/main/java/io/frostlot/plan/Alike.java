package io.frostlot.plan;

import io.frostlot.keeping.Importance;
import java.util.List;

/**
 * Meals that nothing but their eaters tells apart, whatever is delivered: the same days, options,
 * tail and price there, and all of them must-meals or none.
 *
 * @param members in canonical order, at least one
 * @param count meals of all of them
 */
public record Alike(List<Demand> members, int count) {
  public Alike {
    members = List.copyOf(members);
  }

  public static Alike of(List<Demand> members) {
    return new Alike(members, members.stream().mapToInt(demand -> demand.meal().count()).sum());
  }

  /** What holds for each of them. */
  public Demand first() {
    return members.get(0);
  }

  public boolean isMust() {
    return first().meal().importance() == Importance.MUST;
  }
}
