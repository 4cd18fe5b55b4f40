package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.stream.Stream;

/** The table of contents of the program: every rule, in reading order. */
final class Rules {
  private Rules() {}

  static List<Rule> of(World world) {
    return Stream.of(
            List.of(new OneOrder(world), new PledgedPacks(world), new MostOrders(world)),
            ofAnOrder(world),
            List.of(
                new WithinBudget(world),
                new BagsHandedOut(world),
                new WaitingRoom(world),
                new EveryPiece(world),
                new ShelfLife(world),
                new Moves(world),
                new FreezerSpace(world),
                new MealsMet(world),
                new LateMeals(world),
                new LateLimits(world),
                new KindShares(world),
                new SeldomChanges(world),
                new Adequacy(world),
                new SafetyCover(world),
                new SafetyMargin(world),
                new SecondFreezer(world),
                new Holding(world),
                new PastBest(world),
                new Effort(world),
                new ChangedDueSoon(world),
                new Tail(world)))
        .flatMap(List::stream)
        .toList();
  }

  /** What can be had in an order, and what its invoice will say. */
  static List<Rule> ofAnOrder(World world) {
    return List.of(
        new Availability(world),
        new PackPrice(world),
        new PriceBreaks(world),
        new BoxesByTotal(world),
        new WholePacks(world),
        new Sales(world),
        new OrderDiscounts(world),
        new Combining(world),
        new MinimumOrder(world),
        new ShippingCharge(world),
        new FreeShipping(world),
        new Tax(world));
  }

  /** Those that tie the meals of one animal together. */
  static List<Tying> tying(List<Rule> rules) {
    return rules.stream().filter(Tying.class::isInstance).map(Tying.class::cast).toList();
  }

  static Program program(World world) {
    return program(world, Grain.DAYS.fit(world));
  }

  static Program program(World world, Grain grain) {
    return program(world, Formulation.of(grain));
  }

  static Program program(World world, Formulation formulation) {
    Model model = new Model();
    List<Rule> rules = of(world);
    Decisions decisions = new Decisions(world, model, formulation, tying(rules));
    Program program = new Program(model, decisions);
    for (Rule rule : rules) {
      model.instance("");
      rule.impose(program);
    }
    model.instance("");
    return program;
  }

  static Answer.Judged judge(World world, Plan plan) {
    return new Judge(world).byRules(plan);
  }
}
