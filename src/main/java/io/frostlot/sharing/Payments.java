package io.frostlot.sharing;

import io.frostlot.plan.Payment;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The fewest payments that settle balances: as many groups as can be that settle among themselves,
 * each of k members with k - 1 payments.
 */
public final class Payments {
  private Payments() {}

  /** Of any number of people: beyond {@link Subgroup#MOST_MEMBERS} few, but maybe not fewest. */
  public static List<Payment> of(Map<String, Money> balances) {
    List<String> names =
        balances.keySet().stream().sorted().filter(name -> !balances.get(name).isZero()).toList();
    List<Money> owes = names.stream().map(balances::get).toList();
    if (names.isEmpty()) {
      return List.of();
    }
    if (names.size() <= Subgroup.MOST_MEMBERS) {
      return fewest(names, owes);
    }
    List<Payment> payments = new ArrayList<>();
    List<Integer> all = IntStream.range(0, names.size()).boxed().toList();
    settle(all, names, new ArrayList<>(owes), payments);
    return payments;
  }

  /**
   * Payments.
   *
   * @param names at most {@link Subgroup#MOST_MEMBERS}
   * @param owes by name, negative where somebody gets money; they sum to zero
   */
  public static List<Payment> fewest(List<String> names, List<Money> owes) {
    int all = Subgroup.all(names.size()).bits();
    Money[] sums = new Money[all + 1];
    int[] groups = new int[all + 1];
    int[] first = new int[all + 1];
    sums[0] = Money.ZERO;
    for (int bits = 1; bits <= all; bits++) {
      int lowest = Integer.numberOfTrailingZeros(bits);
      sums[bits] = sums[bits & (bits - 1)].plus(owes.get(lowest));
      groups[bits] = -1;
      for (int member : new Subgroup(bits).members()) {
        int without = bits & ~(1 << member);
        int settled = groups[without] + (sums[bits].isZero() ? 1 : 0);
        if (settled > groups[bits]) {
          groups[bits] = settled;
          first[bits] = without;
        }
      }
    }
    if (!sums[all].isZero()) {
      throw new IllegalArgumentException("balances that do not sum to zero: " + owes);
    }
    return pay(names, owes, sums, first);
  }

  /** Goes back over the members in the order in which most groups were settled. */
  private static List<Payment> pay(
      List<String> names, List<Money> owes, Money[] sums, int[] first) {
    List<Payment> payments = new ArrayList<>();
    List<Integer> group = new ArrayList<>();
    for (int bits = sums.length - 1; bits > 0; bits = first[bits]) {
      group.add(Integer.numberOfTrailingZeros(bits & ~first[bits]));
      if (sums[first[bits]].isZero()) {
        settle(group, names, new ArrayList<>(owes), payments);
        group.clear();
      }
    }
    return payments;
  }

  private static void settle(
      List<Integer> group, List<String> names, List<Money> owes, List<Payment> payments) {
    while (true) {
      int payer = group.stream().max(Comparator.comparing(owes::get)).orElseThrow();
      int payee = group.stream().min(Comparator.comparing(owes::get)).orElseThrow();
      if (owes.get(payer).isZero()) {
        return;
      }
      Money most = owes.get(payee).negated();
      Money amount = owes.get(payer).atLeast(most) ? most : owes.get(payer);
      payments.add(new Payment(names.get(payer), names.get(payee), amount));
      owes.set(payer, owes.get(payer).minus(amount));
      owes.set(payee, owes.get(payee).plus(amount));
    }
  }
}
