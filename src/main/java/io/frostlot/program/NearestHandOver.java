package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.program.Places.Place;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * With which joint delivery comes what a keeper would order alone, where the others collect on set
 * days only: one that can be collected before any of it is eaten, where there is one, else the
 * first; rather one that is used already than one of its own, and as late as can be. What would not
 * fit beside the rest that waits at the host's is refused.
 */
final class NearestHandOver {
  /** A delivery that is used already may come so much before the one that it stands for. */
  private static final int MOST_DAYS_EARLIER = 21;

  private final World world;
  private final Set<Slot> used = new HashSet<>();
  private final Map<LocalDate, Double> waitingLitres = new HashMap<>();

  NearestHandOver(World world) {
    this.world = world;
  }

  /**
   * The next one's place, kept free for it.
   *
   * @param own the delivery alone
   * @param lots of one item from it, at least one
   * @param freezer of the keeper
   * @param need first day on which any of it is eaten
   */
  Optional<Place> next(Slot own, List<Lot> lots, Freezer freezer, LocalDate need) {
    double litres =
        lots.stream().mapToDouble(lot -> lot.item().litres().toDouble() * lot.pieces()).sum();
    Optional<Place> best =
        world.slots().stream()
            .filter(slot -> slot.supplier().equals(own.supplier()))
            .flatMap(
                slot -> world.joint().comings(slot, freezer).stream().map(c -> new Place(slot, c)))
            .filter(place -> !waits(place) || fits(place, litres))
            .min(order(own, need));
    best.ifPresent(
        place -> {
          used.add(place.slot());
          if (waits(place)) {
            waitingLitres.merge(place.coming().earliest(), litres, Double::sum);
          }
        });
    return best;
  }

  private Comparator<Place> order(Slot own, LocalDate need) {
    return Comparator.comparing((Place place) -> daysLate(place, need))
        .thenComparing(place -> isNearUsed(place, own) ? 0 : 1)
        .thenComparing(place -> place.coming().latest(), Comparator.reverseOrder())
        .thenComparing(Place::slot, Comparator.reverseOrder());
  }

  private static long daysLate(Place place, LocalDate need) {
    return Math.max(0, ChronoUnit.DAYS.between(need, place.coming().latest()));
  }

  private boolean isNearUsed(Place place, Slot own) {
    LocalDate least = own.arrivesEarliest().minusDays(MOST_DAYS_EARLIER);
    return used.contains(place.slot()) && !place.coming().earliest().isBefore(least);
  }

  private static boolean waits(Place place) {
    return place.coming().earliest().isAfter(place.slot().arrivesEarliest());
  }

  private boolean fits(Place place, double litres) {
    double before = waitingLitres.getOrDefault(place.coming().earliest(), 0.0);
    return before + litres <= world.joint().collecting().waiting().room().toDouble();
  }
}
