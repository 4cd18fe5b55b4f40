package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Of plans made for other worlds, those that can be followed in this one, judged in it. */
final class KnownPlans {
  private final World world;
  private final Set<Slot> slots;
  private final Set<String> meals;

  KnownPlans(World world) {
    this.world = world;
    slots = new HashSet<>(world.slots());
    meals = world.demandsById().keySet();
  }

  List<Answer.Judged> fitting(List<Plan> known) {
    return known.stream().distinct().flatMap(plan -> fitting(plan).stream()).toList();
  }

  private Optional<Answer.Judged> fitting(Plan elsewhere) {
    Optional<Plan> known = new AsKnownHere(world).of(elsewhere);
    if (known.isEmpty()) {
      return Optional.empty();
    }
    Plan plan = known.get();
    Plan here =
        new Plan(
            withoutLost(plan.orders()),
            plan.lots().stream().map(this::asKeptHere).toList(),
            plan.feedings().stream().filter(feeding -> meals.contains(feeding.mealId())).toList(),
            plan.discards());
    Answer.Judged judged = Rules.judge(world, here);
    return judged.books().breaches().isEmpty() && Replay.of(world, here).holds()
        ? Optional.of(judged)
        : Optional.empty();
  }

  /** Without the promotions that do not hold here, and within the packs that a sale is for. */
  private List<Order> withoutLost(List<Order> orders) {
    Map<String, Integer> taken = new HashMap<>();
    List<Order> here = new ArrayList<>();
    for (Order order : orders) {
      Supplier supplier = world.supplier(order.slot().supplier());
      Set<String> held =
          supplier.promotionsOn(order.slot()).stream()
              .map(Supplier.Promotion::id)
              .collect(Collectors.toSet());
      held.retainAll(order.promotions());
      List<Order.Line> lines = new ArrayList<>();
      for (Order.Line line : order.lines()) {
        TreeMap<String, Integer> underSale = new TreeMap<>();
        for (Sale sale : supplier.salesOn(order.slot())) {
          String key = supplier.id() + "/" + sale.id();
          int left = sale.limits().inTotal() - taken.getOrDefault(key, 0);
          int packs = Math.min(left, line.underSale().getOrDefault(sale.id(), 0));
          if (held.contains(sale.id()) && packs > 0) {
            underSale.put(sale.id(), packs);
            taken.merge(key, packs, Integer::sum);
          }
        }
        lines.add(new Order.Line(line.pack(), line.packs(), underSale));
      }
      here.add(new Order(order.slot(), lines, held, order.boxes()));
    }
    return here;
  }

  /**
   * Slots to look at first where none of the plans fits: those of one, for each order that is not
   * to be had here the last one of every supplier that comes no later and the next one of its own,
   * and one for each pledge.
   */
  List<Slot> beginning(List<Plan> known) {
    TreeSet<Slot> part = new TreeSet<>();
    known.stream()
        .limit(1)
        .flatMap(plan -> plan.orders().stream())
        .forEach(
            order -> part.addAll(isSold(order) ? Set.of(order.slot()) : instead(order.slot())));
    for (Pledge pledge : world.pledges()) {
      if (pledge.packs().least() > 0 && part.stream().noneMatch(slot -> counts(pledge, slot))) {
        world.slots().stream()
            .filter(slot -> counts(pledge, slot))
            .findFirst()
            .ifPresent(part::add);
      }
    }
    return List.copyOf(part);
  }

  private boolean isSold(Order order) {
    return slots.contains(order.slot())
        && world.supplier(order.slot().supplier()).sheet().packs().stream()
            .map(Pack::id)
            .collect(Collectors.toSet())
            .containsAll(order.lines().stream().map(line -> line.pack().id()).toList());
  }

  private Collection<Slot> instead(Slot lost) {
    Map<String, Slot> instead = new HashMap<>();
    for (Slot slot : world.slots()) {
      boolean inTime = !slot.arrivesLatest().isAfter(lost.arrivesLatest());
      if (inTime) {
        instead.merge(slot.supplier(), slot, KnownPlans::later);
      } else if (slot.supplier().equals(lost.supplier())) {
        instead.putIfAbsent("later from " + slot.supplier(), slot);
      }
    }
    return instead.values();
  }

  private static Slot later(Slot a, Slot b) {
    return b.arrivesLatest().isAfter(a.arrivesLatest()) ? b : a;
  }

  private boolean counts(Pledge pledge, Slot slot) {
    return slot.supplier().equals(pledge.supplier())
        && world.supplier(slot.supplier()).sheet().packs().stream()
            .anyMatch(pack -> pledge.counts(slot, pack));
  }

  /** Prey in hand brings its use-by with it; the other has that of the freezer it lies in here. */
  private Lot asKeptHere(Lot lot) {
    return lot.origin() instanceof Lot.InHand && !lot.isMoved()
        ? lot
        : lot.withUseBy(world.keeps(lot).useBy());
  }
}
