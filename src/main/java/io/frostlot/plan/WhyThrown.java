package io.frostlot.plan;

import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says why pieces are thrown away by decision. */
public final class WhyThrown {
  private final World world;
  private final Plan plan;
  private final Levels levels;
  private final Map<String, Lot> lots;
  private final Map<String, List<Feeding>> feedings;
  private final Map<String, Set<LocalDate>> overfull = new HashMap<>();

  /** Why. */
  public enum Reason {
    /** Kept, they would find no room, and no meal gets other prey that could have been of them. */
    NO_ROOM,
    /** Kept, they would find no room; later meals get what comes then, or nothing. */
    NO_ROOM_BUT_NEEDED,
    /** There is room, and no meal gets other prey that could have been of them. */
    NOT_NEEDED,
    /** None of these. */
    UNKNOWN
  }

  public WhyThrown(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    levels = new Levels(plan);
    lots = plan.lotsById();
    feedings = plan.feedingsOfMeals();
  }

  /** Of pieces of a lot of the plan. */
  public Reason of(Discard discard) {
    Lot lot = lots.get(discard.lotId());
    boolean needed = isNeeded(lot.item(), discard.day(), lot.useBy());
    boolean noRoom =
        overfull.computeIfAbsent(lot.freezer(), this::overfull).stream()
            .anyMatch(day -> !day.isBefore(discard.day()) && !day.isAfter(lot.useBy()));
    return noRoom
        ? needed ? Reason.NO_ROOM_BUT_NEEDED : Reason.NO_ROOM
        : needed ? Reason.UNKNOWN : Reason.NOT_NEEDED;
  }

  /** Is there a meal in time that could be of an item, and gets what comes later, or nothing? */
  private boolean isNeeded(Item item, LocalDate from, LocalDate useBy) {
    Period days = new Period(from, useBy);
    return world.demands().stream()
        .filter(demand -> Outgrowing.takes(demand, item))
        .filter(demand -> demand.meal().days().first(days).isPresent())
        .anyMatch(demand -> isFedLater(demand, from));
  }

  /** Is nothing there yet of what it gets, or of a part of it? */
  private boolean isFedLater(Demand demand, LocalDate day) {
    List<Feeding> all = feedings.getOrDefault(demand.meal().id(), List.of());
    return all.stream().mapToInt(Feeding::meals).sum() < demand.meal().count()
        || all.stream()
            .flatMap(feeding -> feeding.draws().stream())
            .anyMatch(draw -> lots.get(draw.lotId()).earliest().isAfter(day));
  }

  /** Days on which all that is thrown away from a freezer would not fit beside what lies there. */
  private Set<LocalDate> overfull(String freezer) {
    List<Discard> discards =
        plan.discards().stream()
            .filter(discard -> lots.get(discard.lotId()).freezer().equals(freezer))
            .toList();
    Set<LocalDate> days = new HashSet<>();
    LocalDate first = discards.stream().map(Discard::day).min(LocalDate::compareTo).orElseThrow();
    LocalDate last =
        discards.stream()
            .map(discard -> lots.get(discard.lotId()).useBy())
            .max(LocalDate::compareTo)
            .orElseThrow();
    first
        .datesUntil(last.plusDays(1))
        .filter(
            day ->
                taken(freezer, day) + kept(discards, day)
                    > world.freezer(freezer).usableOn(day).microlitres())
        .forEach(days::add);
    return days;
  }

  private long taken(String freezer, LocalDate day) {
    Policy.FreezerCheck check = world.scenario().policy().freezerCheck();
    return plan.lots().stream()
        .filter(lot -> lot.freezerOn(day).equals(freezer))
        .mapToLong(lot -> levels.checked(lot, day, check) * lot.item().litres().microlitres())
        .sum();
  }

  private long kept(List<Discard> discards, LocalDate day) {
    long kept = 0;
    for (Discard discard : discards) {
      Lot lot = lots.get(discard.lotId());
      boolean there = !discard.day().isAfter(day) && !lot.useBy().isBefore(day);
      kept += there ? discard.pieces() * lot.item().litres().microlitres() : 0;
    }
    return kept;
  }
}
