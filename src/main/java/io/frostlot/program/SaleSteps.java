package io.frostlot.program;

import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which packs of a row are bought under its sales where one order has them at several prices: the
 * first, which are the dearest, those of one sale before those of the next in the order of their
 * names; of n for the price of m the last of them, the cheapest, are free. So nobody chooses which
 * for the sake of an order value.
 *
 * <p>With l the steps and C(v, l) = sum over w &lt;= v of under(w, l), for each l that has a next
 * and yes or no s(v, l): atStep(l) - C(v, l) &lt;= most (1 - s(v, l)), C(v, l+1) &lt;= most s(v,
 * l). Free packs likewise from the other end. Where all packs of an order have one price, none of
 * these rows is needed.
 */
final class SaleSteps {
  private final String rule;
  private final OrderDecisions.PackDecision pack;
  private final Model model;
  private final double most;
  private final List<List<Var>> underBySale = new ArrayList<>();

  SaleSteps(String rule, OrderDecisions.PackDecision pack, Model model) {
    this.rule = rule;
    this.pack = pack;
    this.model = model;
    most = model.column(pack.count()).most();
  }

  private boolean isOfOnePrice() {
    return pack.atStep().size() == 1
        || pack.priceBreak().counting() == PriceBreak.Counting.ALL_UNITS;
  }

  /** Packs under the next sale, by step. */
  List<Var> under() {
    List<Var> under = pack.atStep().stream().map(step -> model.whole(0, most)).toList();
    underBySale.add(under);
    return under;
  }

  /** Rows that say which packs they are, once all sales are known. */
  void impose() {
    List<Linear> upTo = pack.atStep().stream().map(step -> new Linear()).toList();
    for (int v = 0; v < underBySale.size(); v++) {
      for (int l = 0; l < upTo.size(); l++) {
        upTo.get(l).plus(1, underBySale.get(v).get(l));
      }
      for (int l = 0; l + 1 < upTo.size() && !isOfOnePrice(); l++) {
        Var all = model.yesNo();
        Linear open = Linear.of(pack.atStep().get(l)).minus(upTo.get(l));
        model.atMost(rule, open.plus(most, all), most);
        model.atMost(rule, upTo.get(l + 1).copy().plus(-most, all), 0);
      }
    }
    for (int l = 0; l < upTo.size(); l++) {
      model.atMost(rule, upTo.get(l).plus(-1, pack.atStep().get(l)), 0);
    }
  }

  /** Free packs of those under a sale, by step. */
  List<Linear> free(List<Var> under, Sale.TakeAndPay group) {
    if (isOfOnePrice()) {
      return under.stream().map(packs -> freeOf(Linear.of(packs), group)).toList();
    }
    Linear open = new Linear();
    under.forEach(packs -> open.plus(1, packs));
    Linear unsaid = freeOf(open, group);
    Linear paidLater = new Linear();
    List<Linear> free = new ArrayList<>();
    for (int l = under.size() - 1; l >= 0; l--) {
      Var atStep = model.whole(0, most);
      model.atMost(rule, Linear.of(atStep).plus(-1, under.get(l)), 0);
      if (l + 1 < under.size()) {
        Var allLater = model.yesNo();
        model.atMost(rule, Linear.of(atStep).plus(-most, allLater), 0);
        model.atMost(rule, paidLater.copy().plus(most, allLater), most);
      }
      paidLater.plus(1, under.get(l)).plus(-1, atStep);
      unsaid.plus(-1, atStep);
      free.add(0, Linear.of(atStep));
    }
    model.equal(rule, unsaid, 0);
    return free;
  }

  private Linear freeOf(Linear packs, Sale.TakeAndPay group) {
    Var groups = model.whole(0, Math.floor(most / group.take()));
    Linear rest = packs.copy().plus(-group.take(), groups);
    model.row(rule, 0, rest, group.take() - 1.0);
    return new Linear().plus((double) group.take() - group.pay(), groups);
  }

  /** So many packs, taken from the first steps. */
  static int[] first(int packs, int[] atStep) {
    int[] taken = new int[atStep.length];
    int needed = packs;
    for (int l = 0; l < taken.length; l++) {
      taken[l] = Math.min(needed, atStep[l]);
      needed -= taken[l];
    }
    return taken;
  }

  /** Free packs of those under a sale, taken from the last steps. */
  static int[] free(int[] under, Sale.TakeAndPay group) {
    int[] free = new int[under.length];
    int needed = IntStream.of(under).sum() / group.take() * (group.take() - group.pay());
    for (int l = under.length - 1; l >= 0; l--) {
      free[l] = Math.min(needed, under[l]);
      needed -= free[l];
    }
    return free;
  }
}
