package io.frostlot.app;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Order;
import io.frostlot.plan.Solved;
import io.frostlot.plan.SupplierFinding;
import io.frostlot.plan.World;
import io.frostlot.supply.Energy;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Finds out what each supplier is worth: the days planned without it and with it alone, and price
 * sheets side by side. The days after are reckoned at the same prices throughout.
 */
public final class CompareSuppliers {
  private static final double PRESENT = 0.3;

  /** Shares for all parts of one way: alone most meet so few meals that money does not count. */
  private static final double LEFT_OUT = 0.4;

  /** Of what is left out little is used, as a rule: then the bound with all of them says most. */
  private static final double BOUND_OF_ALL = 0.6;

  private static final double ALONE = 0.12;

  private final Questions questions;
  private final World base;
  private final Consumer<SupplierFinding> found;
  private final Map<String, Double> chargePerGram = new HashMap<>();

  /**
   * A comparison that has not begun.
   *
   * @param found told each finding as soon as it is known
   */
  public CompareSuppliers(Questions questions, World base, Consumer<SupplierFinding> found) {
    this.questions = questions;
    this.base = base;
    this.found = found;
  }

  /** Finds out as much as time allows. */
  public void run() {
    questions.boundBeside(base, BOUND_OF_ALL);
    Optional<Solved> longer =
        new Present(questions, Solved::standing, it -> found.accept(new SupplierFinding.All(it)))
            .of(base, PRESENT);
    if (longer.isEmpty()) {
      return;
    }
    Optional<Solved> all = longer;
    Map<SupplierFinding.Part, World> parts = new LinkedHashMap<>();
    List<Supplier> suppliers = base.scenario().suppliers();
    for (SupplierFinding.Way way : SupplierFinding.Way.values()) {
      for (Supplier supplier : suppliers) {
        World part = part(supplier.id(), way);
        stricter(part, supplier.id(), way);
        questions.learn(all.get().plan());
        if (!questions.over() && suppliers.size() > 1) {
          Optional<Solved> best = questions.ask(part, share(way));
          all = questions.again(base, 0);
          SupplierFinding.Part told = told(supplier.id(), way, all.orElseThrow(), best);
          parts.put(told, part);
          found.accept(told);
        }
      }
    }
    sheets(all.get(), parts.values());
    again(longer.get(), parts);
  }

  private World part(String supplier, SupplierFinding.Way way) {
    boolean kept = way == SupplierFinding.Way.ALONE;
    return base.withSlots(
        base.slots().stream().filter(slot -> slot.supplier().equals(supplier) == kept).toList());
  }

  private double share(SupplierFinding.Way way) {
    double all = way == SupplierFinding.Way.LEFT_OUT ? LEFT_OUT : ALONE;
    return all / base.scenario().suppliers().size();
  }

  /** All suppliers allow what a part of them does, and all but one what another alone does. */
  private void stricter(World part, String supplier, SupplierFinding.Way way) {
    questions.looser(base, part);
    if (way == SupplierFinding.Way.ALONE) {
      base.scenario().suppliers().stream()
          .filter(other -> !other.id().equals(supplier))
          .forEach(other -> questions.looser(part(other.id(), SupplierFinding.Way.LEFT_OUT), part));
    }
  }

  private SupplierFinding.Part told(
      String supplier, SupplierFinding.Way way, Solved all, Optional<Solved> part) {
    return new SupplierFinding.Part(
        supplier, way, part.map(it -> questions.between(all, it)).stream().toList());
  }

  /** Where a part showed that the plan with all was not the best, everything is told again. */
  private void again(Solved before, Map<SupplierFinding.Part, World> parts) {
    Optional<Solved> all = questions.again(base, 0);
    if (all.isEmpty() || all.get().standing().compareTo(before.standing()) >= 0) {
      return;
    }
    found.accept(new SupplierFinding.All(all.get()));
    parts.forEach(
        (part, world) ->
            found.accept(told(part.supplier(), part.way(), all.get(), questions.ask(world, 0))));
  }

  private void sheets(Solved all, Iterable<World> parts) {
    shipping(all);
    parts.forEach(world -> questions.ask(world, 0).ifPresent(this::shipping));
    List<SupplierFinding.Price> prices = new ArrayList<>();
    for (Supplier supplier : base.scenario().suppliers()) {
      Map<String, Pack> cheapest = new LinkedHashMap<>();
      supplier
          .sheet()
          .packs()
          .forEach(
              pack ->
                  cheapest.merge(
                      pack.item().id(), pack, (a, b) -> perPiece(b) < perPiece(a) ? b : a));
      cheapest.values().forEach(pack -> prices.add(price(supplier, pack)));
    }
    prices.sort(
        Comparator.comparing((SupplierFinding.Price price) -> price.pack().item().kind())
            .thenComparing(price -> price.pack().item().grams().mean()));
    found.accept(new SupplierFinding.Sheets(prices));
  }

  /** What shipping adds to a gram in the first plan that orders from a supplier. */
  private void shipping(Solved solved) {
    Map<String, Double> charges = new HashMap<>();
    Map<String, Double> grams = new HashMap<>();
    for (Order order : solved.plan().orders()) {
      String supplier = order.slot().supplier();
      double all = solved.answer().plan().books().ledger(order.slot()).allCharges().toDouble();
      charges.merge(supplier, all, Double::sum);
      for (Order.Line line : order.lines()) {
        double each = line.pack().item().grams().mean().toDouble();
        grams.merge(supplier, line.pieces() * each, Double::sum);
      }
    }
    charges.forEach((id, money) -> chargePerGram.putIfAbsent(id, money / grams.get(id)));
  }

  private static double perPiece(Pack pack) {
    return pack.price().toDouble() / pack.pieces();
  }

  private SupplierFinding.Price price(Supplier supplier, Pack pack) {
    double grams = pack.item().grams().mean().toDouble();
    double per100g = 100 * perPiece(pack) / grams;
    double taxed = 1 + supplier.terms().tax().rate().fraction().doubleValue();
    OptionalDouble kcal = Energy.kcalPerGram(pack.item());
    Double charge = chargePerGram.get(supplier.id());
    return new SupplierFinding.Price(
        supplier.id(),
        pack,
        per100g,
        charge == null ? OptionalDouble.empty() : OptionalDouble.of(per100g * taxed + 100 * charge),
        perMeal(pack),
        kcal.isPresent()
            ? OptionalDouble.of(per100g / kcal.getAsDouble())
            : OptionalDouble.empty());
  }

  private OptionalDouble perMeal(Pack pack) {
    long meals = 0;
    long pieces = 0;
    for (Demand demand : base.demands()) {
      int fewest =
          demand.options().stream()
              .filter(option -> pack.piecesOf(option.item()) > 0)
              .mapToInt(option -> option.pieces())
              .min()
              .orElse(0);
      meals += fewest > 0 ? demand.meal().count() : 0;
      pieces += (long) fewest * demand.meal().count();
    }
    return meals == 0 ? OptionalDouble.empty() : OptionalDouble.of(perPiece(pack) * pieces / meals);
  }
}
