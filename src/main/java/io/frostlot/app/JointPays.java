package io.frostlot.app;

import io.frostlot.plan.Group;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Settlement;
import io.frostlot.plan.Shared;
import io.frostlot.sharing.Rounding;
import io.frostlot.sharing.Settling;
import io.frostlot.sharing.Sharing;
import io.frostlot.sharing.Way;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * What members pay of the joint orders of a plan: what settling the invoices that are expected
 * comes to, so that both say the same.
 *
 * @param invoices of every joint order of the parts, nothing agreed on beforehand
 */
record JointPays(
    Group group, Sharing sharing, List<Shared.Part> parts, List<Invoice> invoices, int decimals) {
  /** By member, before a host's credit, in a way that looks at the goods alone. */
  List<Money> in(Way way) {
    return sum(
        settled(group.sharing(way.id()), invoices), pays -> pays.total().minus(pays.credit()));
  }

  /** How the invoices are settled in the group's own way. */
  List<Settlement.Account> settled(List<Invoice> agreed) {
    return settled(group, agreed);
  }

  /** By member, over all invoices. */
  List<Money> sum(List<Settlement.Account> accounts, Function<Settlement.Pays, Money> amount) {
    return group.names().stream()
        .map(
            name ->
                accounts.stream()
                    .map(account -> amount.apply(account.sheet(name).pays()))
                    .reduce(Money.ZERO, Money::plus))
        .toList();
  }

  private List<Settlement.Account> settled(Group in, List<Invoice> some) {
    Settling settling = new Settling(in, sharing);
    return some.stream().map(invoice -> settling.settle(invoice).now()).toList();
  }

  /**
   * The invoices, with what has to be agreed on beforehand so that each member pays so much of all
   * of them together.
   *
   * @param pays by member, before a host's credit; together what the invoices come to
   */
  List<Invoice> coming(List<Money> pays) {
    if (invoices.isEmpty()) {
      return invoices;
    }
    return group.terms().needsPlan() ? agreeing(pays) : evened(pays);
  }

  /** What goods alone do not say is put on the largest invoice of those whom it concerns. */
  private List<Invoice> evened(List<Money> pays) {
    List<Money> before = in(Way.of(group.terms().way()));
    Map<Invoice, Map<String, Money>> more = new HashMap<>();
    for (int i = 0; i < pays.size(); i++) {
      String name = group.names().get(i);
      Money its = pays.get(i).minus(before.get(i));
      if (!its.isZero()) {
        more.computeIfAbsent(largestOf(name), it -> new HashMap<>()).put(name, its);
      }
    }
    return invoices.stream()
        .map(it -> it.agreeing(Map.of(), more.getOrDefault(it, Map.of())))
        .toList();
  }

  private Invoice largestOf(String name) {
    Shared.Part part =
        parts.stream().filter(it -> it.keepers().contains(name)).findFirst().orElseThrow();
    return invoices.stream()
        .filter(invoice -> invoice.head().host().equals(part.host()))
        .max(Comparator.comparing(invoice -> invoice.head().total()))
        .orElseThrow();
  }

  /**
   * Each member's share of what has no price of its own, over the invoices in proportion to that;
   * the last has what rounding leaves.
   */
  private List<Invoice> agreeing(List<Money> pays) {
    double[] shared = new double[pays.size()];
    for (int i = 0; i < shared.length; i++) {
      String name = group.names().get(i);
      Money goods = invoices.stream().map(it -> it.goods(name)).reduce(Money.ZERO, Money::plus);
      shared[i] = pays.get(i).minus(goods).toDouble();
    }
    double sum = DoubleStream.of(shared).sum();
    double size = invoices.stream().mapToDouble(it -> Math.abs(it.common().toDouble())).sum();
    List<Invoice> agreeing = new ArrayList<>();
    List<Money> left = new ArrayList<>(pays);
    for (Invoice invoice : invoices) {
      double common = invoice.common().toDouble();
      double part = size > 0 ? Math.abs(common) / size : 1.0 / invoices.size();
      double[] exact = new double[shared.length];
      for (int i = 0; i < exact.length; i++) {
        double equal = common / exact.length;
        exact[i] =
            invoice.goods(group.names().get(i)).toDouble()
                + equal
                + (shared[i] - sum / exact.length) * part;
      }
      boolean last = agreeing.size() == invoices.size() - 1;
      List<Money> settled =
          last ? List.copyOf(left) : Rounding.settle(exact, invoice.head().total(), decimals);
      for (int i = 0; i < exact.length; i++) {
        left.set(i, left.get(i).minus(settled.get(i)));
      }
      agreeing.add(invoice.agreeing(beyondGoods(invoice, settled), Map.of()));
    }
    return agreeing;
  }

  private Map<String, Money> beyondGoods(Invoice invoice, List<Money> pays) {
    Map<String, Money> beyond = new HashMap<>();
    for (int i = 0; i < pays.size(); i++) {
      String name = group.names().get(i);
      beyond.put(name, pays.get(i).minus(invoice.goods(name).rounded(decimals)));
    }
    return beyond;
  }
}
