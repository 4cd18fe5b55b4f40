package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Says why the plan is what it is, by planning again with something changed: a rule away, an item
 * not bought where it is bought, an order not placed when it is placed.
 */
public final class ExplainPlan {
  /**
   * Share of the time in which to see whether there is any plan; longer where that is not known.
   */
  public static final double ANY = 0.02;

  private static final double PRESENT = 0.32;
  private static final double EACH = 0.036;

  /** The rest is for what allows less, of which that bound says little. */
  private static final double BOUND_OF_ALL = 0.6;

  private static final int MOST_ITEMS = 6;
  private final Questions questions;
  private final World base;
  private final Consumer<ExplainFinding> found;

  private record Bought(String supplier, Item item, double money) {}

  /**
   * An explanation that has not begun.
   *
   * @param found told each finding as soon as it is known
   */
  public ExplainPlan(Questions questions, World base, Consumer<ExplainFinding> found) {
    this.questions = questions;
    this.base = base;
    this.found = found;
  }

  /** Says as much as time allows; nothing where there is no plan. */
  public void run() {
    World loosest = Loosened.all(base);
    questions.looser(loosest, base);
    questions.boundBeside(loosest, BOUND_OF_ALL);
    present(questions, base, PRESENT, found).ifPresent(this::explain);
  }

  /** The plan, told as soon as there is one, and again where a longer look finds a better one. */
  static Optional<Solved> present(
      Questions questions, World base, double share, Consumer<ExplainFinding> found) {
    return new Present(questions, Solved::plan, it -> found.accept(ExplainFinding.Tight.of(it)))
        .of(base, share);
  }

  private void explain(Solved plan) {
    whyNow(plan);
    for (Loosened loosened : Loosened.of(base)) {
      if (!questions.over()) {
        questions.looser(Loosened.all(base), loosened.world());
        questions.looser(loosened.world(), base);
        questions.learn(plan.plan());
        questions
            .ask(loosened.world(), EACH)
            .ifPresent(
                it ->
                    found.accept(
                        new ExplainFinding.RuleCost(
                            loosened.says(),
                            plan.answer().plan().books().shortfalls(loosened.rules()),
                            List.of(questions.between(plan, it, loosened.rules())))));
      }
    }
    for (Bought bought : dearest(plan)) {
      whySupplier(plan, bought);
    }
  }

  private void whyNow(Solved plan) {
    plan.plan().slots().stream()
        .min(Comparator.comparing(Slot::ordered))
        .ifPresent(
            next ->
                stricter(plan, base.withSlots(later(next)))
                    .ifPresent(
                        it ->
                            found.accept(
                                new ExplainFinding.WhyNow(next, questions.between(plan, it)))));
  }

  /** Without that supplier's deliveries up to this one. */
  private List<Slot> later(Slot next) {
    return base.slots().stream()
        .filter(
            slot ->
                !slot.supplier().equals(next.supplier()) || slot.ordered().isAfter(next.ordered()))
        .toList();
  }

  private static List<Bought> dearest(Solved plan) {
    TreeMap<String, Bought> bought = new TreeMap<>();
    for (Order order : plan.plan().orders()) {
      for (Order.Line line : order.lines()) {
        double money = line.packs() * line.pack().price().toDouble();
        Item item = line.pack().item();
        bought.merge(
            item.id(),
            new Bought(order.slot().supplier(), item, money),
            (a, b) -> new Bought(a.supplier(), a.item(), a.money() + b.money()));
      }
    }
    return bought.values().stream()
        .sorted(Comparator.comparingDouble(Bought::money).reversed())
        .limit(MOST_ITEMS)
        .toList();
  }

  private void whySupplier(Solved plan, Bought bought) {
    if (questions.over()) {
      return;
    }
    stricter(plan, notFrom(bought))
        .ifPresent(
            it ->
                found.accept(
                    new ExplainFinding.WhySupplier(
                        bought.supplier(),
                        bought.item(),
                        questions.between(plan, it),
                        instead(plan.plan(), it.plan()))));
  }

  /** The answer where less is allowed, begun with the plan. */
  private Optional<Solved> stricter(Solved plan, World world) {
    questions.looser(base, world);
    questions.learn(plan.plan());
    return questions.ask(world, EACH);
  }

  /** The world in which that supplier does not sell the item; prices of the tail stay. */
  private World notFrom(Bought bought) {
    List<Supplier> suppliers =
        base.scenario().suppliers().stream()
            .map(it -> it.id().equals(bought.supplier()) ? without(it, bought.item()) : it)
            .toList();
    return base.withScenario(base.scenario().withSuppliers(suppliers));
  }

  private static Supplier without(Supplier from, Item item) {
    return from.withSheet(
        from.sheet()
            .withPacks(
                from.sheet().packs().stream().filter(pack -> !pack.item().equals(item)).toList()));
  }

  private static List<ExplainFinding.Instead> instead(Plan before, Plan after) {
    TreeMap<String, ExplainFinding.Instead> more = new TreeMap<>();
    count(after, 1, more);
    count(before, -1, more);
    return more.values().stream().filter(row -> row.packs() > 0).toList();
  }

  private static void count(Plan plan, int sign, Map<String, ExplainFinding.Instead> rows) {
    for (Order order : plan.orders()) {
      String supplier = order.slot().supplier();
      for (Order.Line line : order.lines()) {
        rows.merge(
            supplier + "/" + line.pack().id(),
            new ExplainFinding.Instead(supplier, line.pack().id(), sign * line.packs()),
            (a, b) -> new ExplainFinding.Instead(supplier, a.packId(), a.packs() + b.packs()));
      }
    }
  }
}
