package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lots of a plan in which nothing is moved, by shelf: the lots of one item in one freezer, of
 * which those that go past their use-by first are eaten first.
 */
final class LotsOfPlan {
  private final World world;
  private final Plan plan;
  private final Map<String, Lot> byId = new HashMap<>();
  private final List<Shelf> shelves;

  /** Names of an item and a freezer. */
  private record Shelf(String item, String freezer) {
    static Shelf of(Lot lot) {
      return new Shelf(lot.item().id(), lot.freezer());
    }
  }

  /**
   * A way to serve a meal.
   *
   * @param shelf by number
   */
  record Serving(Option option, LocalDate day, int shelf) {}

  LotsOfPlan(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    plan.lots().forEach(lot -> byId.put(lot.id(), lot));
    shelves = plan.lots().stream().map(Shelf::of).distinct().toList();
  }

  /** Is nothing moved, and what goes past its use-by first eaten first? */
  boolean areInOrder() {
    int[][] eaten = eaten(feeding -> true);
    StockLevels levels = levels();
    return plan.lots().stream().noneMatch(Lot::isMoved)
        && IntStream.range(0, eaten.length)
            .allMatch(shelf -> levels.levels(shelf, eaten[shelf]).isPresent());
  }

  /** How a meal is served; empty where from several shelves. */
  Optional<Serving> serving(Feeding feeding) {
    List<Integer> from = feeding.draws().stream().map(this::shelf).distinct().toList();
    return from.size() == 1
        ? Optional.of(new Serving(feeding.option(), feeding.day(), from.get(0)))
        : Optional.empty();
  }

  private int shelf(Feeding.Draw draw) {
    return shelves.indexOf(Shelf.of(byId.get(draw.lotId())));
  }

  /** All ways to serve an option on a day. */
  Stream<Serving> servings(Option option, LocalDate day) {
    return IntStream.range(0, shelves.size())
        .filter(i -> shelves.get(i).item().equals(option.item().id()))
        .mapToObj(i -> new Serving(option, day, i));
  }

  Rations.Way way(Serving serving) {
    Option option = serving.option();
    return new Rations.Way(
        serving.shelf(), option.pieces(), day(serving.day()), option.grams().toDouble());
  }

  /** Pieces that some feedings take, by shelf and day. */
  int[][] eaten(Predicate<Feeding> some) {
    int days = Timeline.lastDay(world) - Timeline.day(first()) + 1;
    int[][] eaten = new int[shelves.size()][days];
    plan.feedings().stream()
        .filter(some)
        .forEach(
            feeding ->
                feeding
                    .draws()
                    .forEach(draw -> eaten[shelf(draw)][day(feeding.day())] += draw.pieces()));
    return eaten;
  }

  private LocalDate first() {
    return world.scenario().planning().from();
  }

  private int day(LocalDate date) {
    return Timeline.day(date) - Timeline.day(first());
  }

  StockLevels levels() {
    List<Freezer> freezers = world.scenario().larder().freezers();
    List<LocalDate> checks = List.copyOf(FreezerSpace.checkDays(world, plan));
    double[][] room =
        freezers.stream()
            .map(it -> checks.stream().mapToDouble(day -> it.usableOn(day).toDouble()).toArray())
            .toArray(double[][]::new);
    List<String> names = freezers.stream().map(Freezer::name).toList();
    List<List<StockLevels.Batch>> byShelf =
        shelves.stream()
            .map(shelf -> lots(shelf).map(lot -> batch(lot, names.indexOf(lot.freezer()))).toList())
            .toList();
    return new StockLevels(byShelf, checks.stream().mapToInt(this::day).toArray(), room);
  }

  private Stream<Lot> lots(Shelf shelf) {
    return plan.lots().stream()
        .filter(lot -> Shelf.of(lot).equals(shelf))
        .sorted(Comparator.comparing(Lot::useBy));
  }

  private StockLevels.Batch batch(Lot lot, int freezer) {
    List<StockLevels.Thrown> thrown =
        plan.discards().stream()
            .filter(discard -> discard.lotId().equals(lot.id()))
            .map(discard -> new StockLevels.Thrown(day(discard.day()), discard.pieces()))
            .toList();
    StockLevels.Place place =
        new StockLevels.Place(freezer, day(lot.earliest()), lot.item().litres().toDouble());
    return new StockLevels.Batch(lot.pieces(), day(lot.latest()), day(lot.useBy()), place, thrown);
  }

  /** The plan with some meals served otherwise; what is no longer left is not thrown away. */
  Plan fed(Map<String, Serving> chosen) {
    List<ByUseBy<Lot>> left = shelves.stream().map(this::stock).toList();
    List<Feeding> wanted = new ArrayList<>();
    plan.feedings().stream().filter(it -> !chosen.containsKey(it.mealId())).forEach(wanted::add);
    chosen.forEach(
        (meal, it) -> wanted.add(new Feeding(meal, it.day(), it.option(), 1, List.of())));
    wanted.sort(Comparator.comparing(Feeding::day).thenComparing(Feeding::mealId));
    List<Feeding> feedings = new ArrayList<>();
    List<Discard> discards = new ArrayList<>();
    Deque<Discard> toThrow =
        new ArrayDeque<>(
            plan.discards().stream().sorted(Comparator.comparing(Discard::day)).toList());
    for (Feeding feeding : wanted) {
      while (!toThrow.isEmpty() && !toThrow.peek().day().isAfter(feeding.day())) {
        throwAway(toThrow.poll(), left).ifPresent(discards::add);
      }
      List<Feeding.Draw> draws = new ArrayList<>();
      byShelf(feeding, chosen)
          .forEach(
              (shelf, pieces) ->
                  left.get(shelf)
                      .take(
                          pieces,
                          Timeline.day(feeding.day()),
                          (lot, taken) -> draws.add(new Feeding.Draw(lot.id(), taken))));
      feedings.add(
          new Feeding(feeding.mealId(), feeding.day(), feeding.option(), feeding.meals(), draws));
    }
    toThrow.forEach(discard -> throwAway(discard, left).ifPresent(discards::add));
    return new Plan(plan.orders(), plan.lots(), feedings, discards);
  }

  /** Pieces that a feeding takes. */
  private Map<Integer, Integer> byShelf(Feeding feeding, Map<String, Serving> chosen) {
    Serving serving = chosen.get(feeding.mealId());
    if (serving != null) {
      return Map.of(serving.shelf(), feeding.pieces());
    }
    Map<Integer, Integer> pieces = new HashMap<>();
    feeding.draws().forEach(draw -> pieces.merge(shelf(draw), draw.pieces(), Integer::sum));
    return pieces;
  }

  private ByUseBy<Lot> stock(Shelf shelf) {
    ByUseBy<Lot> stock = new ByUseBy<>();
    lots(shelf)
        .forEach(
            lot ->
                stock.add(
                    lot,
                    new ByUseBy.Days(Timeline.day(lot.latest()), Timeline.day(lot.useBy())),
                    lot.pieces()));
    return stock;
  }

  private Optional<Discard> throwAway(Discard discard, List<ByUseBy<Lot>> left) {
    Lot lot = byId.get(discard.lotId());
    return left.get(shelves.indexOf(Shelf.of(lot))).batches().stream()
        .filter(batch -> batch.as().equals(lot) && batch.left() > 0)
        .findFirst()
        .map(
            batch -> {
              int pieces = Math.min(discard.pieces(), batch.left());
              batch.lose(pieces);
              return new Discard(discard.lotId(), discard.day(), pieces);
            });
  }
}
