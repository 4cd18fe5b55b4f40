package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is added to a world that several keepers share: whose a thing is, which bags may be cut, and
 * when those who do not receive an order collect from it. Each keeper's meals are fed from that
 * keeper's freezers only.
 *
 * @param keepers by name of an animal, a row of needs, a freezer or a lot under way; not in it: the
 *     one keeper of an ordinary world
 * @param buyers by supplier id: who fetches there for itself alone; not in it: joint orders
 * @param cutting which bags may be cut
 * @param collecting when others than the host get their pieces of a joint order
 * @param eaters keepers whose animals eat from a freezer that is nobody's, by its name
 */
public record Joint(
    Map<String, String> keepers,
    Map<String, String> buyers,
    Cutting cutting,
    Collecting collecting,
    Map<String, Set<String>> eaters) {
  /** An ordinary world: one keeper, who gets everything. */
  public static final Joint ALONE =
      new Joint(Map.of(), Map.of(), Cutting.ANY, new Collecting("", Set.of(), Waiting.NONE));

  public Joint {
    keepers = Map.copyOf(keepers);
    buyers = Map.copyOf(buyers);
    eaters = Map.copyOf(eaters);
  }

  /** Each keeper's animals eat from its own freezers. */
  public Joint(
      Map<String, String> keepers,
      Map<String, String> buyers,
      Cutting cutting,
      Collecting collecting) {
    this(keepers, buyers, cutting, collecting, Map.of());
  }

  /**
   * When others than the host get their pieces.
   *
   * @param host who receives
   * @param days hand-over dates; none: on the day of arrival
   * @param waiting what may lie at the host's until then
   */
  public record Collecting(String host, Set<LocalDate> days, Waiting waiting) {
    public Collecting {
      days = Collections.unmodifiableSet(new TreeSet<>(days));
    }
  }

  /** When pieces of a delivery come into a freezer: on its one day, or between its two. */
  public record Coming(LocalDate earliest, LocalDate latest) {}

  public String keeperOf(Freezer freezer) {
    return keepers.getOrDefault(freezer.name(), "");
  }

  public String keeperOf(Demand demand) {
    return keepers.getOrDefault(demand.meal().eater(), "");
  }

  /** Do a keeper's animals eat from a freezer? */
  public boolean feeds(Freezer freezer, String keeper) {
    Set<String> several = eaters.getOrDefault(freezer.name(), Set.of(keeperOf(freezer)));
    return several.contains(keeper);
  }

  /**
   * A relaxation: freezers are nobody's, the animals of several keepers eat from one, and all that
   * is ordered comes for all.
   *
   * @param several keepers by freezer
   */
  public Joint pooled(Map<String, Set<String>> several) {
    Map<String, String> rest = new HashMap<>(keepers);
    rest.keySet().removeAll(several.keySet());
    return new Joint(rest, Map.of(), ALONE.cutting, ALONE.collecting, several);
  }

  /** May what is under way go into a freezer: one from which its keeper's animals eat? */
  public boolean isOwn(String placedLot, Freezer freezer) {
    return feeds(freezer, keepers.getOrDefault(placedLot, ""));
  }

  /** Is it an order from which every keeper may get pieces? */
  public boolean isJoint(Slot slot) {
    return !buyers.containsKey(slot.supplier());
  }

  /** When pieces of an order may come into a freezer; never where they may not. */
  public List<Coming> comings(Slot slot, Freezer freezer) {
    String keeper = keeperOf(freezer);
    boolean received = keeper.equals(collecting.host()) || collecting.days().isEmpty();
    if (keeper.equals(buyers.getOrDefault(slot.supplier(), keeper))
        && (received || !isJoint(slot))) {
      return List.of(new Coming(slot.arrivesEarliest(), slot.arrivesLatest()));
    }
    if (!isJoint(slot)) {
      return List.of();
    }
    LocalDate last = slot.arrivesEarliest().plusDays(collecting.waiting().days());
    return collecting.days().stream()
        .filter(day -> !day.isBefore(slot.arrivesLatest()) && !day.isAfter(last))
        .map(day -> new Coming(day, day))
        .toList();
  }
}
