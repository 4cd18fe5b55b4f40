package io.frostlot.app;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Percent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Finds out what deals are worth: whether, how many packs, in a worse case, and when to wait. */
public final class CheckSale {
  private static final double FIRST = 0.07;
  private static final double WITHOUT = 0.17;
  private static final double GIVEN = 0.3;

  /** Of the time in which bounds are looked for: the rest is that of the days with the deals. */
  private static final double BOUND_WITHOUT = 0.45;

  private static final double ONE = 0.035;
  private static final double CURVES_FROM = 0.5;
  private static final double SKIPPED = 0.15;
  private static final double WAITING = 0.2;
  private static final double REST = 0.05;
  private final Questions questions;
  private final World base;
  private final Request request;
  private final Consumer<SaleFinding> found;
  private final List<Difference> told = new ArrayList<>();

  /**
   * What is asked for.
   *
   * @param deals at least one
   * @param skipped share of meals that a worse case skips besides; zero: none is looked at
   * @param chance that the deals come, at most one; none: they are sure
   */
  public record Request(List<Deal> deals, Percent skipped, List<Percent> chance) {
    public Request {
      deals = List.copyOf(deals);
      chance = List.copyOf(chance);
    }
  }

  /**
   * A check that has not begun.
   *
   * @param base the world without the deals
   * @param found told each finding as soon as it is known
   */
  public CheckSale(Questions questions, World base, Request request, Consumer<SaleFinding> found) {
    this.questions = questions;
    this.base = base;
    this.request = request;
    this.found = found;
  }

  /** Finds out as much as time allows. */
  public void run() {
    World given = with(request.deals());
    questions.looser(given, base);
    questions.boundBeside(base, BOUND_WITHOUT);
    questions.boundBeside(given, 1 - BOUND_WITHOUT);
    if (questions.atLength(base, WITHOUT, FIRST, this::early).isEmpty()) {
      return;
    }
    questions.askAfresh(given, GIVEN);
    tell(0);
    if (told.isEmpty() && questions.over()) {
      return;
    }
    for (Deal deal : request.deals()) {
      new SaleCurve(questions, deal, this::withOthers)
          .find(until(deal))
          .ifPresentOrElse(found, () -> notKnown(SaleFinding.Asked.CURVE));
    }
    tell(0);
    besides(given);
    tell(0);
  }

  /** Each that is asked for is told, if only that it is not known. */
  private void besides(World given) {
    Optional<Solved> without = questions.ask(base, ONE);
    Optional<Solved> best = questions.ask(given, ONE);
    if (request.deals().size() > 1) {
      without.flatMap(this::apart).ifPresentOrElse(found, () -> notKnown(SaleFinding.Asked.APART));
    }
    if (!request.skipped().isZero()) {
      SkippedMeals skipped = new SkippedMeals(questions, request.skipped(), ONE);
      best.flatMap(it -> skipped.find(base, given, it, request.deals()))
          .ifPresentOrElse(found, () -> notKnown(SaleFinding.Asked.WORSE_CASE));
    }
    for (Percent chance : request.chance()) {
      without
          .flatMap(it -> new Waiting(questions, ONE).find(chance, it, request.deals()))
          .ifPresentOrElse(found, () -> notKnown(SaleFinding.Asked.WAITING));
    }
  }

  private void notKnown(SaleFinding.Asked asked) {
    found.accept(new SaleFinding.NotKnown(asked));
  }

  /** The plan of the days without the deals may use them, too. */
  private void early(Solved without) {
    questions.learn(without.plan());
    tell(0);
  }

  /** The share of all time at which the curve of a deal should end, so that all else has some. */
  private double until(Deal deal) {
    double end =
        1 - REST - (request.skipped().isZero() ? 0 : SKIPPED) - WAITING * request.chance().size();
    double part = (request.deals().indexOf(deal) + 1.0) / request.deals().size();
    return CURVES_FROM + (end - CURVES_FROM) * part;
  }

  /** What they are worth, with all that is known so far; told only where it is news. */
  private void tell(double share) {
    Optional<Solved> without = questions.again(base, share);
    Optional<Solved> best = questions.again(with(request.deals()), share);
    if (without.isEmpty() || best.isEmpty()) {
      return;
    }
    SaleFinding.Worth worth = worth(without.get(), best.get());
    if (told.isEmpty() || isNews(told.get(told.size() - 1), worth.difference())) {
      told.add(worth.difference());
      found.accept(worth);
    }
  }

  /** Other plans, or a bound that says more of them. */
  private boolean isNews(Difference before, Difference after) {
    return !before.found().equals(after.found())
        || !before.after().equals(after.after())
        || after.saves().narrows(before.saves(), Math.pow(10, -base.decimals()));
  }

  private World with(List<? extends Deal> deals) {
    return World.of(Deal.in(base.scenario(), deals));
  }

  /** The world with a deal in another form, or without it, all others as they are. */
  private World withOthers(Deal deal, List<Deal> instead) {
    List<Deal> all = new ArrayList<>(request.deals());
    all.remove(deal);
    all.addAll(instead);
    return with(all);
  }

  private SaleFinding.Worth worth(Solved without, Solved with) {
    Outline before = outline(without);
    return new SaleFinding.Worth(
        request.deals(),
        without,
        with,
        questions.between(without, with).within(0, DealWorth.most(base, request.deals())),
        taken(without.plan(), with.plan()),
        Changes.between(before, outline(with)));
  }

  private static Outline outline(Solved solved) {
    return Outline.of("", solved.answer().plan(), solved.outcome());
  }

  /** Packs of rows that a sale is for, on the dates of the sale. */
  private List<SaleFinding.Taken> taken(Plan without, Plan with) {
    List<SaleFinding.Taken> taken = new ArrayList<>();
    for (Supplier supplier : base.scenario().suppliers()) {
      for (Pack pack : supplier.sheet().packs()) {
        int after = packs(with, supplier, pack);
        int before = packs(without, supplier, pack);
        if (after + before > 0) {
          taken.add(new SaleFinding.Taken(pack, after, before));
        }
      }
    }
    return taken;
  }

  private int packs(Plan plan, Supplier supplier, Pack pack) {
    return plan.orders().stream()
        .filter(order -> order.slot().supplier().equals(supplier.id()))
        .filter(order -> request.deals().stream().anyMatch(d -> holds(d, order.slot(), pack)))
        .flatMap(order -> order.lines().stream())
        .filter(line -> line.pack().equals(pack))
        .mapToInt(Order.Line::packs)
        .sum();
  }

  private static boolean holds(Deal deal, Slot slot, Pack pack) {
    return deal.supplier().equals(slot.supplier())
        && deal.when().contains(slot.ordered())
        && deal.covers(pack);
  }

  private Optional<SaleFinding> apart(Solved without) {
    List<SaleFinding.Alone> alone = new ArrayList<>();
    for (Deal deal : request.deals()) {
      World one = with(List.of(deal));
      questions.looser(with(request.deals()), one);
      questions.looser(one, base);
      questions
          .ask(one, ONE)
          .ifPresent(
              with ->
                  alone.add(
                      new SaleFinding.Alone(
                          deal,
                          questions
                              .between(without, with)
                              .within(0, DealWorth.most(base, List.of(deal))))));
    }
    return alone.size() == request.deals().size()
        ? Optional.of(new SaleFinding.Apart(alone))
        : Optional.empty();
  }
}
