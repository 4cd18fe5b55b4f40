package io.frostlot.app;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Group;
import io.frostlot.plan.Shared;
import java.util.List;
import java.util.Map;

/**
 * Meals that a member would not meet alone but gets by ordering together; what they cost beyond the
 * plan of the meals that all meet alone is charged to their eaters, by grams.
 */
record ExtraMeals(Group group, SubgroupPlans plans, List<Shared.Part> parts) {

  /**
   * By member, in major units.
   *
   * @param beyond what the plan costs beyond the other meals; nothing where it is less
   */
  double[] cost(double beyond) {
    double[] grams = new double[group.keepers().size()];
    double all = 0;
    for (Shared.Part part : parts) {
      Map<String, Integer> served = part.plan().served();
      for (Demand demand : part.world().demands()) {
        if (plans.unmetAlone().contains(demand.meal().id())) {
          int member = group.names().indexOf(part.world().joint().keeperOf(demand));
          double eaten =
              served.getOrDefault(demand.meal().id(), 0)
                  * demand.meal().prey().window().target().toDouble();
          grams[member] += eaten;
          all += eaten;
        }
      }
    }
    double[] cost = new double[grams.length];
    for (int i = 0; i < cost.length && all > 0 && beyond > 0; i++) {
      cost[i] = beyond * grams[i] / all;
    }
    return cost;
  }
}
