package io.frostlot.program;

import io.frostlot.plan.Alike;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Goes through the days with some deliveries: each brings what meals need for which it is the one
 * that costs least, as far as there is room. Looks at kinds of meals and not at animals, so it
 * takes about as long as it takes to read them.
 */
final class ByDelivery {
  private final World world;
  private final Offers offers;
  private final LotKinds kinds;
  private final OrderPrices prices;
  private final Pantry pantry;
  private final Mouths mouths;
  private final Map<Pack, Integer> bought = new HashMap<>();
  private final Map<Integer, List<Portion>> wanted = new HashMap<>();
  private final List<Order> orders = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();
  private double money;
  private long shortfall;
  private boolean fits = true;

  /**
   * Deliveries that nothing comes of yet.
   *
   * @param deliveries in order of arrival
   */
  ByDelivery(World world, List<Slot> deliveries) {
    this.world = world;
    offers = new Offers(world, deliveries);
    kinds = new LotKinds(world);
    prices = new OrderPrices(world);
    pantry = new Pantry(world);
    mouths = new Mouths(pantry);
    world.scenario().larder().stock().forEach(lot -> pantry.put(Lot.of(lot)));
    for (Alike alike : world.meals().alike()) {
      Portion portion = new Portion(alike, alike.count());
      mouths.add(portion, portion.best());
      if (!portion.isOfTail()) {
        want(portion, 0);
      }
    }
  }

  /** From a delivery on, which one should bring it? None where it must live on what is there. */
  private void want(Portion portion, int from) {
    offers
        .best(portion.alike().first(), from)
        .ifPresent(
            choice ->
                wanted
                    .computeIfAbsent(choice.delivery(), delivery -> new ArrayList<>())
                    .add(portion));
  }

  /** Follows all days. */
  ByDelivery run() {
    int first = Timeline.day(world.scenario().planning().from());
    int last = Timeline.lastDay(world);
    int next = 0;
    pantry.begin(first);
    discards.addAll(pantry.makeRoom(first));
    for (int day = first; day <= last && fits; day++) {
      pantry.begin(day);
      for (PlacedLot lot : world.scenario().larder().placed()) {
        if (Math.max(first, Timeline.day(lot.arrivesEarliest())) == day) {
          fits &= pantry.stow(staying(kinds.of(lot).toList()), lot.pieces()) == 0;
        }
      }
      while (next < offers.slots().size() && offers.earliest(next) <= day) {
        buy(next++);
      }
      mouths.feed(day);
      if (day <= Timeline.day(world.scenario().planning().to())) {
        money += pantry.night();
        shortfall += pantry.lacking(world.scenario().policy().safety().coverDays(), day);
      }
    }
    return this;
  }

  private static List<Lot> staying(List<Lot> kinds) {
    return kinds.stream().filter(lot -> !lot.isMoved()).toList();
  }

  private void buy(int delivery) {
    Slot slot = offers.slots().get(delivery);
    Supplier supplier = world.supplier(slot.supplier());
    Basket basket = new Basket(supplier, pantry.free(offers.earliest(delivery)), this::available);
    List<Portion> here = wanted.getOrDefault(delivery, new ArrayList<>());
    here.sort(
        Comparator.comparing((Portion portion) -> !portion.isMust()).thenComparing(Portion::best));
    List<Portion> promised = new ArrayList<>();
    here.forEach(portion -> promise(portion, delivery, basket, promised));
    addMargin(promised, delivery, basket);
    boolean enough = basket.goods() > supplier.terms().minimum().from().toDouble();
    if (!enough) {
      for (Portion portion : promised) {
        mouths.release(portion);
        want(portion, delivery + 1);
      }
      return;
    }
    basket.packs().forEach((pack, packs) -> receive(slot, pack, packs));
    Optional<OrderPrices.Priced> priced = prices.of(slot, basket.packs());
    fits &= priced.isPresent();
    priced.ifPresent(
        it -> {
          orders.add(it.order());
          money += it.invoice() + world.scenario().policy().charges().order().toDouble();
        });
  }

  /** More of what is eaten before the next delivery, so that a share is left when that comes. */
  private void addMargin(List<Portion> promised, int delivery, Basket basket) {
    Map<Offers.Offer, Integer> soon = new LinkedHashMap<>();
    for (Portion portion : promised) {
      if (portion.best() < offers.next(delivery)) {
        Offers.Offer offer = offers.of(delivery, portion);
        soon.merge(offer, portion.meals(), Integer::sum);
      }
    }
    double share = world.scenario().policy().safety().margin().fraction().doubleValue();
    soon.forEach(
        (offer, meals) ->
            basket.take(offer.option(), offer.pack(), (int) Math.ceil(share * meals)));
  }

  private void receive(Slot slot, Pack pack, int packs) {
    bought.merge(pack, packs, Integer::sum);
    for (Pack.Part part : pack.parts()) {
      List<Lot> lots = staying(kinds.of(part.item(), slot).toList());
      fits &= pantry.stow(lots, packs * part.pieces()) == 0;
    }
  }

  private int available(Pack pack) {
    int left = pack.available().inTotal() - bought.getOrDefault(pack, 0);
    return Math.min(left, pack.available().perDelivery());
  }

  /** As many of the meals as the delivery takes care of; the others want a later one. */
  private void promise(Portion portion, int delivery, Basket basket, List<Portion> promised) {
    for (Offers.Offer offer : offers.of(delivery, portion.alike().first())) {
      Item item = offer.option().item();
      if (!basket.knows(item)) {
        basket.has(item, mouths.spare(item, portion.best()));
      }
      int meals = basket.take(offer.option(), offer.pack(), portion.meals());
      if (meals > 0) {
        Portion some = meals == portion.meals() ? portion : portion.split(meals);
        mouths.promise(some, offer.option());
        promised.add(some);
        if (some == portion) {
          return;
        }
        mouths.add(some, Math.max(some.best(), offers.latest(delivery)));
      }
    }
    want(portion, delivery + 1);
  }

  Mouths mouths() {
    return mouths;
  }

  /** About how many piece-days of cover are lacking. */
  long shortfall() {
    return shortfall;
  }

  List<Order> orders() {
    return orders;
  }

  List<Lot> lots() {
    return pantry.lots();
  }

  /** What there is no room for on the first day. */
  List<Discard> discards() {
    return discards;
  }

  /** Could everything that came be put away? */
  boolean fits() {
    return fits;
  }

  /** About what the plan comes to, each order under the promotions that seem best for it. */
  double money() {
    return money + mouths.tail().toDouble();
  }
}
