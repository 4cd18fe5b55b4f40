package io.frostlot.program;

import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * With which delivery of a joint world, and on which day, comes what keepers would order alone:
 * with that of the same order day, where a keeper fetches itself with its own; where the others
 * collect on set days only, item by item with the {@link NearestHandOver}.
 */
final class Places {
  private final World world;
  private final Map<Wanted, Place> places = new HashMap<>();
  private final List<Waiting> waiting = new ArrayList<>();

  /** A delivery, and when pieces of it come into a keeper's freezers. */
  record Place(Slot slot, Joint.Coming coming) {}

  private record Wanted(String keeper, Slot own, String item) {}

  /** What has no place yet, and the first day on which any of it is eaten. */
  private record Waiting(Wanted wanted, List<Lot> lots, String freezer, LocalDate need) {}

  private Places(World world) {
    this.world = world;
  }

  static Places of(World joint, Map<Keeper, Plan> plans) {
    Places places = new Places(joint);
    plans.forEach(places::add);
    NearestHandOver nearest = new NearestHandOver(joint);
    places.waiting.stream()
        .sorted(Comparator.comparing(places::isHosts).thenComparing(Waiting::need))
        .forEach(
            it ->
                nearest
                    .next(it.wanted().own(), it.lots(), joint.freezer(it.freezer()), it.need())
                    .ifPresent(place -> places.places.put(it.wanted(), place)));
    return places;
  }

  /** Is a plan of use that lacks what has no place? */
  boolean mayLeaveOut() {
    return !world.joint().collecting().days().isEmpty();
  }

  /** Empty where there is none. */
  Optional<Place> of(Keeper keeper, Slot own, Item item) {
    return Optional.ofNullable(places.get(new Wanted(keeper.name(), own, item.id())));
  }

  private boolean isHosts(Waiting some) {
    return some.wanted().keeper().equals(world.joint().collecting().host());
  }

  private void add(Keeper keeper, Plan plan) {
    for (Order order : plan.orders()) {
      order.lines().stream()
          .map(line -> line.pack().item())
          .distinct()
          .forEach(item -> add(keeper, plan, order.slot(), item));
    }
  }

  private void add(Keeper keeper, Plan plan, Slot own, Item item) {
    List<Lot> lots =
        plan.lots().stream()
            .filter(lot -> lot.item().equals(item) && lot.origin().equals(new Lot.Ordered(own)))
            .toList();
    Wanted wanted = new Wanted(keeper.name(), own, item.id());
    String fetching = keeper.fetching(own.supplier());
    boolean fetched = keeper.name().equals(world.joint().buyers().get(fetching));
    if (lots.isEmpty()) {
      return;
    }
    String freezer = keeper.own(lots.get(0).firstFreezer());
    if (mayLeaveOut() && !fetched) {
      waiting.add(new Waiting(wanted, lots, freezer, need(plan, lots)));
    } else {
      sameDay(fetched ? fetching : own.supplier(), own, freezer)
          .ifPresent(place -> places.put(wanted, place));
    }
  }

  private Optional<Place> sameDay(String supplier, Slot own, String freezer) {
    return world.slots().stream()
        .filter(slot -> slot.supplier().equals(supplier) && slot.ordered().equals(own.ordered()))
        .flatMap(
            slot ->
                world.joint().comings(slot, world.freezer(freezer)).stream()
                    .map(coming -> new Place(slot, coming)))
        .findFirst();
  }

  private static LocalDate need(Plan plan, List<Lot> lots) {
    List<String> ids = lots.stream().map(Lot::id).toList();
    return plan.feedings().stream()
        .filter(feeding -> feeding.draws().stream().anyMatch(draw -> ids.contains(draw.lotId())))
        .map(Feeding::day)
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MAX);
  }
}
