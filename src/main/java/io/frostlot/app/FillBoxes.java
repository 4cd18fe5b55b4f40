package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Order;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for what would be worth putting into the boxes of the next orders, which are paid for: the
 * world is planned again with the deliveries of the plan shown, all that the order holds and at
 * least one pack more in as many boxes; later orders may then hold other packs.
 */
final class FillBoxes {
  private final Planner planner;

  FillBoxes(Planner planner) {
    this.planner = planner;
  }

  /**
   * What is left in the boxes; empty where no next order is sent in boxes with a limit.
   *
   * @param limits for all orders together
   * @param watch once it says stop, what is known so far is the answer
   */
  Optional<BoxRoom> of(Solved shown, Limits limits, Watch watch) {
    List<Order> sent =
        shown.plan().next(shown.world().scenario().planning().from()).stream()
            .filter(order -> !boxes(shown.world(), order).isEmpty())
            .toList();
    Share share = new Share(planner, limits, watch);
    List<BoxRoom.Left> left = new ArrayList<>();
    for (Order order : sent) {
      left.add(left(shown, order, share.part(sent.size() - left.size())));
    }
    return left.isEmpty() ? Optional.empty() : Optional.of(new BoxRoom(left));
  }

  private static List<BoxFill.Fill> boxes(World world, Order order) {
    Supplier supplier = world.supplier(order.slot().supplier());
    return supplier.isPickUp() ? List.of() : BoxFill.together(supplier.boxing(), order);
  }

  private static BoxRoom.Left left(Solved shown, Order order, Share share) {
    World world = shown.world();
    Supplier supplier = world.supplier(order.slot().supplier());
    List<BoxFill.Fill> boxes = boxes(world, order);
    if (supplier.sheet().packs().stream().noneMatch(it -> fits(it, order, supplier.boxing()))) {
      return new BoxRoom.Left(order.slot(), boxes, BoxRoom.Verdict.NO_PACK_FITS, List.of());
    }
    List<BoxRoom.Addition> addition =
        share
            .answerFrom(List.of(shown.plan()), fuller(shown, order, supplier), 1)
            .filter(Answer.WithPlan.class::isInstance)
            .map(answer -> new Solved(world, (Answer.WithPlan) answer))
            .map(it -> new BoxRoom.Addition(more(order, it), Difference.ofPart(shown, it)))
            .stream()
            .toList();
    Interval saves =
        addition.stream()
            .map(BoxRoom.Addition::difference)
            .filter(Difference::sameMeals)
            .map(Difference::saves)
            .findFirst()
            .orElse(Interval.ofAnything(shown));
    BoxRoom.Verdict verdict = verdict(saves, world);
    return new BoxRoom.Left(
        order.slot(),
        boxes,
        verdict,
        addition.stream()
            .filter(it -> verdict == BoxRoom.Verdict.SAVES || isEaten(it, world))
            .toList());
  }

  /** What nobody eats is the least dear where nothing is worth adding; it is no advice. */
  private static boolean isEaten(BoxRoom.Addition addition, World world) {
    return world.demands().stream()
        .flatMap(demand -> demand.options().stream())
        .anyMatch(
            option ->
                addition.packs().stream().anyMatch(it -> it.pack().item().equals(option.item())));
  }

  private static BoxRoom.Verdict verdict(Interval saves, World world) {
    double halfUnit = Math.pow(10, -world.decimals()) / 2;
    if (saves.least().orElse(Double.NEGATIVE_INFINITY) >= halfUnit) {
      return BoxRoom.Verdict.SAVES;
    }
    return saves.most().orElse(Double.POSITIVE_INFINITY) <= halfUnit
        ? BoxRoom.Verdict.NOTHING
        : BoxRoom.Verdict.CANNOT_TELL;
  }

  /** Can one more of the packs be ordered, in the boxes that there are? */
  private static boolean fits(Pack pack, Order order, Boxing boxing) {
    Map<Pack, Integer> packs = new LinkedHashMap<>(order.packs());
    int count = packs.merge(pack, 1, Integer::sum);
    if (count > pack.available().perDelivery() || !BoxFit.fits(pack, boxing.limits())) {
      return false;
    }
    int boxes =
        boxing.way() == Boxing.Way.WHOLE_PACKS
            ? BoxFit.pack(packs, boxing.limits()).size()
            : BoxFit.leastByTotals(packs, boxing.limits());
    return boxes <= order.boxes().count();
  }

  /** The deliveries of the plan, one of them with more packs in as many boxes. */
  private static World fuller(Solved shown, Order order, Supplier supplier) {
    Slot slot = order.slot();
    Period day = new Period(slot.ordered(), slot.ordered());
    List<Pledge> pledges = new ArrayList<>();
    order
        .packs()
        .forEach(
            (pack, count) ->
                pledges.add(
                    new Pledge(
                        supplier.id(), Set.of(pack.id()), day, Pledge.Packs.atLeast(count))));
    Set<String> any = supplier.sheet().packs().stream().map(Pack::id).collect(Collectors.toSet());
    int packs = order.packs().values().stream().mapToInt(count -> count).sum();
    pledges.add(
        new Pledge(
            supplier.id(), any, day, Pledge.Packs.atLeast(packs + 1), order.boxes().count()));
    return shown.world().withSlots(shown.plan().slots()).withPledges(pledges);
  }

  private static List<Order.Content> more(Order order, Solved fuller) {
    Map<Pack, Integer> before = order.packs();
    List<Order.Content> more = new ArrayList<>();
    fuller
        .plan()
        .packs()
        .get(order.slot())
        .forEach(
            (pack, count) -> {
              int besides = count - before.getOrDefault(pack, 0);
              if (besides > 0) {
                more.add(new Order.Content(pack, besides));
              }
            });
    return more;
  }
}
