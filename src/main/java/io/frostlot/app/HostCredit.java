package io.frostlot.app;

import io.frostlot.plan.Group;
import io.frostlot.plan.Shared;
import io.frostlot.sharing.Rounding;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What the others of a part pay its host for each joint order, in equal parts. */
record HostCredit(Group group, List<Shared.Part> parts, int decimals) {

  /** By member of the group; negative for hosts. */
  List<Money> byMember() {
    List<Money> credits = new ArrayList<>();
    for (String name : group.names()) {
      Shared.Part part =
          parts.stream().filter(p -> p.keepers().contains(name)).findFirst().orElseThrow();
      credits.add(of(part, name));
    }
    return credits;
  }

  private Money of(Shared.Part part, String name) {
    long orders = part.plan().orders().stream().filter(part::isJoint).count();
    Money total = group.terms().hostCredit().times(orders).rounded(decimals);
    if (part.host().equals(name)) {
      return total.negated();
    }
    List<String> others = part.keepers().stream().filter(k -> !k.equals(part.host())).toList();
    if (total.isZero() || part.host().isEmpty()) {
      return Money.ZERO;
    }
    double[] equal = new double[others.size()];
    Arrays.fill(equal, total.toDouble() / equal.length);
    return Rounding.settle(equal, total, decimals).get(others.indexOf(name));
  }
}
