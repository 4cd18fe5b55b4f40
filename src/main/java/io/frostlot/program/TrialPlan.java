package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** From a plan to a {@link Trial} and back. */
final class TrialPlan {
  private final TrialWorld of;
  private final Plan plan;
  private final List<Lot> certain;
  private final List<Discard> discards;
  private final List<List<Lot>> kinds = new ArrayList<>();
  private final Map<Place, List<Integer>> batches = new HashMap<>();
  private final Stocks stocks;
  private final Trial trial;

  /** What a delivery brings of a ware. */
  private record Place(int delivery, int ware) {}

  private TrialPlan(TrialWorld of, Plan plan) {
    this.of = of;
    this.plan = plan;
    certain = plan.lots().stream().filter(lot -> !isOrdered(lot)).toList();
    Set<String> ids = new HashSet<>();
    certain.forEach(lot -> ids.add(lot.id()));
    discards = plan.discards().stream().filter(it -> ids.contains(it.lotId())).toList();
    Undo undo = new Undo();
    stocks = of.stocks(undo);
    of.wares().forEach(ware -> kinds.add(new ArrayList<>()));
    certain.forEach(this::add);
    LotKinds lots = new LotKinds(of.world());
    for (int d = 0; d < of.deliveries().all().size(); d++) {
      for (Bag bag : of.deliveries().get(d).rows()) {
        for (Bag.Part part : bag.parts()) {
          add(d, part.ware(), lots);
        }
      }
    }
    trial = new Trial(of.menu(), of.deliveries(), stocks, undo, new Weighing(of.ofShortfall()));
  }

  private static boolean isOrdered(Lot lot) {
    return lot.origin() instanceof Lot.Ordered;
  }

  /** A trial that begins as a plan is; empty where that cannot be said. */
  static Optional<TrialPlan> of(TrialWorld world, Plan plan) {
    if (plan.lots().stream().anyMatch(Lot::isMoved)) {
      return Optional.empty();
    }
    TrialPlan begun = new TrialPlan(world, plan);
    boolean ordered = plan.orders().stream().allMatch(begun::buy);
    return ordered && plan.lots().stream().allMatch(begun::put) && begun.serve()
        ? Optional.of(begun)
        : Optional.empty();
  }

  private void add(Lot lot) {
    int thrown =
        discards.stream().filter(it -> it.lotId().equals(lot.id())).mapToInt(Discard::pieces).sum();
    int item = of.number(lot);
    stocks.of(item).put(batch(item, lot), lot.pieces() - thrown);
  }

  private int batch(int item, Lot lot) {
    kinds.get(item).add(lot);
    LookDays look = of.look();
    int freezer = of.freezers().indexOf(lot.freezer());
    boolean fresh = !(lot.origin() instanceof Lot.InHand);
    return stocks
        .of(item)
        .add(
            new ItemStock.Batch(
                new ItemStock.Stay(
                    look.day(waits(lot)),
                    look.day(lot.earliest()),
                    look.day(lot.latest()),
                    look.day(lot.useBy())),
                freezer,
                fresh));
  }

  /** The first day on which it takes room: at the host's, where it is collected later. */
  private LocalDate waits(Lot lot) {
    return lot.origin() instanceof Lot.Ordered ordered && isCollected(ordered.slot())
        ? ordered.slot().arrivesEarliest()
        : lot.earliest();
  }

  private boolean isCollected(Slot slot) {
    Joint joint = of.world().joint();
    return joint.isJoint(slot) && !joint.collecting().days().isEmpty();
  }

  private void add(int delivery, int ware, LotKinds lots) {
    Ware own = of.wares().get(ware);
    batches.computeIfAbsent(
        new Place(delivery, ware),
        place ->
            lots.of(own.item(), of.deliveries().get(delivery).slot())
                .filter(lot -> !lot.isMoved() && of.keeper(lot).equals(own.keeper()))
                .map(lot -> batch(ware, lot))
                .toList());
  }

  Trial trial() {
    return trial;
  }

  /** Numbers of the batches that pieces of a ware may become when they are delivered. */
  List<Integer> batches(int delivery, int item) {
    return batches.getOrDefault(new Place(delivery, item), List.of());
  }

  private boolean buy(Order order) {
    OptionalInt delivery = of.deliveries().number(order.slot());
    Optional<Map<Bag, Integer>> bags = of.bags().of(order, plan);
    if (delivery.isEmpty() || bags.isEmpty()) {
      return false;
    }
    for (Map.Entry<Bag, Integer> some : bags.get().entrySet()) {
      int row = of.deliveries().get(delivery.getAsInt()).rows().indexOf(some.getKey());
      if (row < 0) {
        return false;
      }
      trial.buy(delivery.getAsInt(), row, some.getValue());
    }
    return true;
  }

  private boolean put(Lot lot) {
    if (!(lot.origin() instanceof Lot.Ordered ordered)) {
      return true;
    }
    int item = of.number(lot);
    Optional<Integer> batch =
        batches(of.deliveries().number(ordered.slot()).orElse(-1), item).stream()
            .filter(b -> kinds.get(item).get(b).freezer().equals(lot.freezer()))
            .filter(b -> kinds.get(item).get(b).earliest().equals(lot.earliest()))
            .findFirst();
    batch.ifPresent(b -> trial.put(item, b, lot.pieces()));
    return batch.isPresent();
  }

  private boolean serve() {
    Map<String, Deque<Integer>> open = new HashMap<>();
    for (int d = 0; d < of.menu().dishes().size(); d++) {
      String meal = of.menu().dishes().get(d).demand().meal().id();
      open.computeIfAbsent(meal, id -> new ArrayDeque<>()).add(d);
    }
    for (Feeding feeding : plan.feedings()) {
      for (int n = 0; n < feeding.meals(); n++) {
        int dish = open.get(feeding.mealId()).remove();
        trial.serve(dish, way(dish, feeding));
      }
    }
    return trial.weigh() < Double.POSITIVE_INFINITY;
  }

  private int way(int dish, Feeding feeding) {
    List<Menu.Way> ways = of.menu().dishes().get(dish).ways();
    int day = of.look().day(feeding.day());
    return IntStream.range(0, ways.size())
        .filter(w -> ways.get(w).option().equals(feeding.option()) && ways.get(w).day() == day)
        .findFirst()
        .orElse(-1);
  }

  /** What the trial is now, as a plan; whether it can be followed is for the rules to judge. */
  Plan plan() {
    List<Order> orders = new ArrayList<>();
    for (int d = 0; d < of.deliveries().all().size(); d++) {
      if (trial.isOpen(d)) {
        of.deliveries().order(d, trial.packs(d)).ifPresent(priced -> orders.add(priced.order()));
      }
    }
    Set<String> names = new HashSet<>();
    certain.forEach(lot -> names.add(lot.id()));
    List<Lot> lots = new ArrayList<>(certain);
    TrialFeedings feedings = new TrialFeedings(of, trial);
    int number = 0;
    for (int item = 0; item < stocks.items(); item++) {
      for (int b : stocks.of(item).inOrder()) {
        Lot lot = kinds.get(item).get(b);
        if (isOrdered(lot)) {
          do {
            number++;
          } while (!names.add("lot " + number));
          lot = lot.named("lot " + number).withPieces(stocks.of(item).pieces(b));
          lots.add(lot);
        }
        feedings.add(item, lot, stocks.of(item).pieces(b));
      }
    }
    return new Plan(orders, lots, feedings.all(), discards);
  }
}
