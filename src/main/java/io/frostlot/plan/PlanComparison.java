package io.frostlot.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Two plans side by side: only what differs.
 *
 * @param names of both
 * @param changes meals, orders and totals
 * @param lines of the bill that differ; their differences sum exactly to that of the costs
 * @param suppliers names by id, as far as they are known
 */
public record PlanComparison(
    List<String> names,
    Changes changes,
    List<BillLines.Line> lines,
    Map<String, String> suppliers) {
  public PlanComparison {
    names = List.copyOf(names);
    lines = List.copyOf(lines);
    suppliers = Map.copyOf(suppliers);
  }

  /**
   * A plan by its name, whatever it was read from.
   *
   * @param suppliers names by id; none where only the plan is at hand
   */
  public record Named(String name, Outline outline, BillLines bill, Map<String, String> suppliers) {
    public Named {
      suppliers = Map.copyOf(suppliers);
    }

    /** A plan of a world. */
    public static Named of(String name, String digest, World world, Answer.Judged judged) {
      Map<String, String> suppliers = new HashMap<>();
      world.scenario().suppliers().forEach(it -> suppliers.put(it.id(), it.name()));
      Outline outline = Outline.of(digest, judged, Outcome.of(world, judged.plan()));
      return new Named(name, outline, BillLines.of(judged.books()), suppliers);
    }
  }

  public static PlanComparison of(Named before, Named after) {
    Map<String, String> suppliers = new HashMap<>(before.suppliers());
    suppliers.putAll(after.suppliers());
    return new PlanComparison(
        List.of(before.name(), after.name()),
        Changes.between(before.outline(), after.outline()),
        BillLines.different(before.bill(), after.bill()),
        suppliers);
  }
}
