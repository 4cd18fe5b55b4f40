package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A first guess at once: meal after meal, eaten from what is there already, else a pack is bought
 * in the latest slot that comes in time, of the option that costs least for what could still be
 * eaten of it. Knows no freezer and no order terms: what it says is only where to begin.
 */
final class Greedy {
  private final World world;
  private final int longestLife;
  private final Map<String, TreeMap<Integer, Integer>> wanted = new HashMap<>();
  private final Map<String, ByUseBy<Item>> there = new HashMap<>();
  private final Map<Slot, Map<Pack, Integer>> bought = new LinkedHashMap<>();
  private final Map<String, List<Offer>> offers = new HashMap<>();

  private record Offer(Slot slot, Pack pack) {}

  private record Choice(Option option, Offer offer, double cost) {}

  Greedy(World world) {
    this.world = world;
    longestLife =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .mapToInt(f -> Math.min(f.life().days(), f.life().smallDays()))
            .max()
            .orElse(0);
    for (Alike alike : world.meals().alike()) {
      int day = Timeline.day(alike.first().meal().days().best());
      for (Option option : alike.first().options()) {
        wanted
            .computeIfAbsent(option.item().id(), id -> new TreeMap<>())
            .merge(day, option.pieces() * alike.count(), Integer::sum);
      }
    }
    for (Slot slot : world.slots()) {
      for (Pack pack : world.supplier(slot.supplier()).sheet().packs()) {
        pack.items()
            .forEach(
                item ->
                    offers
                        .computeIfAbsent(item.id(), id -> new ArrayList<>())
                        .add(new Offer(slot, pack)));
      }
    }
    for (StockLot lot : world.scenario().larder().stock()) {
      ByUseBy.Days days = new ByUseBy.Days(Timeline.day(lot.arrived()), Timeline.day(lot.useBy()));
      add(lot.item(), days, lot.pieces());
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      int from = Timeline.day(lot.arrivesLatest());
      add(lot.item(), new ByUseBy.Days(from, from + longestLife - 1), lot.pieces());
    }
  }

  private void add(Item item, ByUseBy.Days days, int pieces) {
    there.computeIfAbsent(item.id(), id -> new ByUseBy<>()).add(item, days, pieces);
  }

  /** Deliveries to buy from. */
  Set<Slot> deliveries() {
    world.demands().stream()
        .filter(demand -> !demand.tail())
        .sorted(Comparator.comparing((Demand demand) -> demand.meal().days().best()))
        .forEach(
            demand -> {
              for (int i = 0; i < demand.meal().count(); i++) {
                serve(demand);
              }
            });
    return bought.keySet();
  }

  private void serve(Demand demand) {
    int day = Timeline.day(demand.meal().days().best());
    for (Option option : demand.options()) {
      if (eat(option, day)) {
        return;
      }
    }
    int latest = Timeline.day(demand.meal().days().latest());
    Optional<Choice> choice = cheapest(demand, day).or(() -> cheapest(demand, latest));
    choice.ifPresent(
        found -> {
          buy(found, found.option().pieces());
          eat(found.option(), latest);
        });
  }

  private boolean eat(Option option, int day) {
    ByUseBy<Item> pieces = there.get(option.item().id());
    if (pieces == null || pieces.there(day) < option.pieces()) {
      return false;
    }
    pieces.take(option.pieces(), day, (item, taken) -> {});
    return true;
  }

  private Optional<Choice> cheapest(Demand demand, int day) {
    List<Choice> choices = new ArrayList<>();
    for (Option option : demand.options()) {
      for (Offer offer : offers.getOrDefault(option.item().id(), List.of())) {
        int from = Timeline.day(offer.slot().arrivesLatest());
        if (from <= day && from + longestLife > day && isHad(offer)) {
          choices.add(new Choice(option, offer, cost(option, offer, day)));
        }
      }
    }
    return choices.stream()
        .min(
            Comparator.comparingDouble(Choice::cost)
                .thenComparing(c -> c.offer().slot(), Comparator.reverseOrder())
                .thenComparing(c -> c.offer().pack().id()));
  }

  private boolean isHad(Offer offer) {
    int packs = bought.getOrDefault(offer.slot(), Map.of()).getOrDefault(offer.pack(), 0);
    return packs < offer.pack().available().perDelivery()
        && packs < offer.pack().available().inTotal();
  }

  /** What the meal costs when a pack is spread over what could still be eaten of it. */
  private double cost(Option option, Offer offer, int day) {
    int end = Timeline.day(offer.slot().arrivesEarliest()) + longestLife - 1;
    int eatable =
        wanted.get(option.item().id()).subMap(day, true, Math.max(day, end), true).values().stream()
            .mapToInt(n -> n)
            .sum();
    Pack pack = offer.pack();
    int pieces = pack.piecesOf(option.item());
    double shared = Math.max(option.pieces(), Math.min(pieces, eatable / 2.0));
    boolean open = bought.containsKey(offer.slot());
    double opening =
        open ? 0 : world.supplier(offer.slot().supplier()).shipping().rate().firstBox().toDouble();
    return (pack.price().toDouble() * option.pieces() + opening * 0.2) / shared
        + (day - Timeline.day(offer.slot().arrivesLatest())) * 1e-6;
  }

  private void buy(Choice choice, int pieces) {
    Pack pack = choice.offer().pack();
    Slot slot = choice.offer().slot();
    int own = pack.piecesOf(choice.option().item());
    int packs = (pieces + own - 1) / own;
    bought.computeIfAbsent(slot, s -> new LinkedHashMap<>()).merge(pack, packs, Integer::sum);
    int from = Timeline.day(slot.arrivesLatest());
    int useBy = Timeline.day(slot.arrivesEarliest()) + longestLife - 1;
    ByUseBy.Days days = new ByUseBy.Days(from, useBy);
    pack.parts().forEach(part -> add(part.item(), days, packs * part.pieces()));
  }
}
