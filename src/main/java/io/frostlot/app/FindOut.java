package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Finds out which guesses would change the next orders most: those with most at stake (see {@link
 * Stakes}) are tried first, the days planned again at both ends of each.
 */
final class FindOut {
  /** Where rounds of work are counted; else as many as there is time for. */
  private static final int MOST_TRIED = 8;

  /** In less nothing is found; doubled where it was too short. */
  private static final Duration LEAST = Duration.ofMillis(400);

  /** Where rounds of work are counted, a plan at an end of a guess takes a part of them. */
  private static final int PART_OF_ROUNDS = 4;

  private final Planner planner;

  FindOut(Planner planner) {
    this.planner = planner;
  }

  /**
   * What would change the next orders; empty where nothing is ordered.
   *
   * @param limits for all guesses together
   * @param watch once it says stop, what is known so far is the answer
   */
  Optional<Guesses> of(Solved shown, Limits limits, Watch watch) {
    if (shown.plan().orders().isEmpty()) {
      return Optional.empty();
    }
    Share share = new Share(planner, fewerRounds(limits), watch);
    Stakes stakes = new Stakes(shown);
    Map<Guess, Double> atStake = new HashMap<>();
    List<Guess> likely = new ArrayList<>(Guessing.of(shown.world()));
    likely.forEach(guess -> atStake.put(guess, stakes.of(guess)));
    likely.sort(Comparator.comparingDouble((Guess guess) -> -atStake.get(guess)));
    int most = limits.rounds().isPresent() ? MOST_TRIED : likely.size();
    Duration least = LEAST;
    GuessEnds found = new GuessEnds(shown);
    List<Guess> notTried = new ArrayList<>();
    for (Guess guess : likely) {
      int toDo = 2 * (most - found.all().size());
      if (toDo == 0 || share.isOver()) {
        notTried.add(guess);
        continue;
      }
      Optional<GuessEnds.Found> both =
          tried(shown, guess, found.known(guess), share, share.atLeast(least, toDo));
      if (both.isEmpty()) {
        least = least.multipliedBy(2);
        notTried.add(guess);
      }
      both.ifPresent(found::add);
    }
    return Optional.of(new Guesses(tried(shown, found), notTried));
  }

  private static Limits fewerRounds(Limits limits) {
    return limits.rounds().isEmpty()
        ? limits
        : new Limits(
            limits.time(),
            OptionalInt.of(Math.max(1, limits.rounds().getAsInt() / PART_OF_ROUNDS)));
  }

  private static List<Guesses.Tried> tried(Solved shown, GuessEnds found) {
    return found.all().stream()
        .map(
            it ->
                new Guesses.Tried(
                    it.guess(),
                    end(shown, it.guess(), it.low(), found),
                    end(shown, it.guess(), it.high(), found)))
        .toList();
  }

  /**
   * Empty where at one end no plan was found in its share of the time; the stricter comes first.
   */
  private static Optional<GuessEnds.Found> tried(
      Solved shown, Guess guess, List<Plan> known, Share share, int plansToMake) {
    boolean lowFirst = guess.kind() != Guess.Kind.PREY_LITRES;
    Guess.Ends ends = guess.ends();
    double first = lowFirst ? ends.low() : ends.high();
    double second = lowFirst ? ends.high() : ends.low();
    return at(shown, guess, first, known, share.part(plansToMake))
        .flatMap(
            one ->
                at(shown, guess, second, and(known, one), share.part(Math.max(1, plansToMake - 1)))
                    .map(
                        other ->
                            lowFirst
                                ? new GuessEnds.Found(guess, one, other)
                                : new GuessEnds.Found(guess, other, one)));
  }

  private static List<Plan> and(List<Plan> known, Solved one) {
    return Stream.concat(known.stream(), Stream.of(one.plan())).toList();
  }

  private static Optional<Solved> at(
      Solved shown, Guess guess, double value, List<Plan> known, Share share) {
    if (value == guess.ends().assumed()) {
      return Optional.of(shown);
    }
    World world = Guessing.at(shown.world(), guess, value);
    return share
        .answerFrom(known, world, 1)
        .filter(Answer.WithPlan.class::isInstance)
        .map(answer -> new Solved(world, (Answer.WithPlan) answer));
  }

  private static Guesses.End end(Solved shown, Guess guess, Solved at, GuessEnds found) {
    Guesses.Sure sure = found.sure(guess, at);
    Guesses.End end =
        new Guesses.End(
            Difference.Side.of(at),
            Changes.ofOrders(next(shown), next(at)),
            moved(shown, at),
            sure);
    return sure == Guesses.Sure.UNKNOWN ? end.unknown() : end;
  }

  private static List<Order> nextOrders(Solved solved) {
    return solved.plan().next(solved.world().scenario().planning().from());
  }

  private static List<Outline.Ordered> next(Solved solved) {
    return nextOrders(solved).stream()
        .map(order -> Outline.ordered(order, solved.answer().plan().books()))
        .toList();
  }

  /** A row of an order. */
  private record Row(String supplier, LocalDate orderBy, String packId) {}

  /** List price of the packs, as they are now, that only one of both orders on a day. */
  private static Money moved(Solved shown, Solved found) {
    Map<Row, Integer> more = new HashMap<>();
    count(found, 1, more);
    count(shown, -1, more);
    Money moved = Money.ZERO;
    for (Map.Entry<Row, Integer> row : more.entrySet()) {
      Row of = row.getKey();
      Money price =
          shown.world().supplier(of.supplier()).sheet().packs().stream()
              .filter(pack -> pack.id().equals(of.packId()))
              .map(Pack::price)
              .findFirst()
              .orElseThrow();
      moved = moved.plus(price.times(Math.abs(row.getValue())));
    }
    return moved;
  }

  private static void count(Solved solved, int sign, Map<Row, Integer> rows) {
    for (Order order : nextOrders(solved)) {
      order
          .packs()
          .forEach(
              (pack, packs) ->
                  rows.merge(
                      new Row(order.slot().supplier(), order.slot().ordered(), pack.id()),
                      sign * packs,
                      Integer::sum));
    }
  }
}
