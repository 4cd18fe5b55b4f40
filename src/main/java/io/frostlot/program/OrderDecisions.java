package io.frostlot.program;

import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The decisions of one possible order, and the running values that pricing rules write and read.
 */
final class OrderDecisions {
  private final Slot slot;
  private final Supplier supplier;
  private final Var open;
  private final Map<Pack, PackDecision> packs = new LinkedHashMap<>();
  private final Map<String, Var> promotions = new LinkedHashMap<>();
  private final Map<String, Var> choices = new LinkedHashMap<>();
  private final Map<String, Var> stepsReached = new LinkedHashMap<>();
  private final OrderSums sums = new OrderSums();
  private final Var boxes;
  private final Map<Pack, SortedMap<String, Linear>> underSale = new LinkedHashMap<>();

  /**
   * Packs of one row of the price sheet.
   *
   * @param count packs bought, whole
   * @param atStep packs at the regular price, then at each step of its price break; they sum to
   *     {@code count}
   */
  record PackDecision(Pack pack, Var count, List<Var> atStep, PriceBreak priceBreak) {}

  OrderDecisions(Slot slot, Supplier supplier, Model model) {
    this.slot = slot;
    this.supplier = supplier;
    open = model.yesNo();
    int mostBoxes = supplier.isPickUp() ? 0 : supplier.boxing().mostBoxes();
    boxes = model.whole(0, mostBoxes);
  }

  /** Adds a row of the price sheet that may be bought up to a number of packs. */
  void add(Pack pack, int most, Model model) {
    PriceBreak priceBreak = supplier.breakOf(pack).upTo(most);
    Var count = model.whole(0, most);
    List<Var> atStep = new ArrayList<>();
    if (priceBreak.steps().isEmpty()) {
      atStep.add(count);
    } else {
      for (int step = 0; step <= priceBreak.steps().size(); step++) {
        atStep.add(model.whole(0, most));
      }
    }
    packs.put(pack, new PackDecision(pack, count, List.copyOf(atStep), priceBreak));
  }

  /** Is a promotion taken by this order? Created when first asked for. */
  Var promotion(String id, Model model) {
    return promotions.computeIfAbsent(id, k -> model.yesNo());
  }

  /** A yes or no of a rule about this order, under a key that is the same in every order. */
  Var choice(String key, Model model) {
    Var choice = model.yesNo();
    choices.put(key, choice);
    return choice;
  }

  Map<String, Var> choices() {
    return choices;
  }

  /** Is a step of a price break reached? Under a key that is the same in every order. */
  Var stepReached(String key, Model model) {
    Var reached = model.yesNo();
    stepsReached.put(key, reached);
    return reached;
  }

  Map<String, Var> stepsReached() {
    return stepsReached;
  }

  /** Records packs of a row bought under a sale. */
  void underSale(Pack pack, String saleId, Linear count) {
    underSale.computeIfAbsent(pack, k -> new TreeMap<>()).put(saleId, count);
  }

  /** Packs bought under each sale. */
  SortedMap<String, Linear> underSale(Pack pack) {
    return underSale.getOrDefault(pack, new TreeMap<>());
  }

  Map<String, Var> promotions() {
    return promotions;
  }

  Slot slot() {
    return slot;
  }

  Supplier supplier() {
    return supplier;
  }

  Var open() {
    return open;
  }

  Var boxes() {
    return boxes;
  }

  Map<Pack, PackDecision> packs() {
    return packs;
  }

  OrderSums sums() {
    return sums;
  }

  Linear pieces(Item item) {
    Linear sum = new Linear();
    for (PackDecision pack : packs.values()) {
      int pieces = pack.pack().piecesOf(item);
      if (pieces > 0) {
        sum.plus(pieces, pack.count());
      }
    }
    return sum;
  }

  /** Packs of each row at a point, those of which there are any. */
  Map<Pack, Integer> packs(double[] point) {
    Map<Pack, Integer> bought = new LinkedHashMap<>();
    packs.forEach(
        (pack, decision) -> {
          int count = (int) Math.round(point[decision.count().index()]);
          if (count > 0) {
            bought.put(pack, count);
          }
        });
    return bought;
  }
}
