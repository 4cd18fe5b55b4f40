package io.frostlot.app;

import io.frostlot.plan.Group;
import io.frostlot.plan.Shared;
import io.frostlot.sharing.Rounding;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Members alike in all but their names, who order together, pay the same, but for a minor unit:
 * which of them gets which pieces, or goes to a shop, is chance.
 *
 * @param later by member, what comes after, which counts too
 */
record AlikePay(Group group, List<Shared.Part> parts, List<Money> later, int decimals) {

  /** What each pays then; together the same. */
  List<Money> evened(List<Money> pays) {
    List<Money> evened = new ArrayList<>(pays);
    for (List<Integer> kind : new Likeness(group).kinds()) {
      for (Shared.Part part : parts) {
        List<Integer> alike =
            kind.stream().filter(i -> part.keepers().contains(group.names().get(i))).toList();
        if (part.has(true) && alike.size() > 1) {
          even(alike, evened);
        }
      }
    }
    return evened;
  }

  private void even(List<Integer> alike, List<Money> pays) {
    Money all =
        alike.stream().map(i -> pays.get(i).plus(later.get(i))).reduce(Money.ZERO, Money::plus);
    double[] equal = new double[alike.size()];
    Arrays.fill(equal, all.toDouble() / equal.length);
    List<Money> settled = Rounding.settle(equal, all, decimals);
    for (int i = 0; i < equal.length; i++) {
      int member = alike.get(i);
      pays.set(member, settled.get(i).minus(later.get(member)));
    }
  }
}
