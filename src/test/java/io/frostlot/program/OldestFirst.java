package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A plan in which what is eaten and thrown away of an item in a freezer is taken from what goes
 * past its use-by first; where nothing is left, nothing is thrown away, but eaten from a lot that
 * has nothing left.
 */
final class OldestFirst {
  private final Plan plan;
  private final Map<String, Lot> lots;
  private final Map<String, Integer> left = new HashMap<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();

  private OldestFirst(Plan plan) {
    this.plan = plan;
    lots = plan.lots().stream().collect(Collectors.toMap(Lot::id, lot -> lot));
    lots.forEach((id, lot) -> left.put(id, lot.pieces()));
  }

  static Plan of(Plan plan) {
    OldestFirst sorted = new OldestFirst(plan);
    TreeSet<LocalDate> days = new TreeSet<>();
    plan.feedings().forEach(feeding -> days.add(feeding.day()));
    plan.discards().forEach(discard -> days.add(discard.day()));
    days.forEach(sorted::day);
    return new Plan(plan.orders(), plan.lots(), sorted.feedings, sorted.discards);
  }

  private void day(LocalDate day) {
    for (Discard discard : plan.discards()) {
      Lot like = lots.get(discard.lotId());
      if (like != null && discard.day().equals(day)) {
        take(like, day, discard.pieces(), true)
            .forEach((id, pieces) -> discards.add(new Discard(id, day, pieces)));
      }
    }
    for (Feeding feeding : plan.feedings()) {
      if (feeding.day().equals(day)) {
        feed(feeding);
      }
    }
  }

  private void feed(Feeding feeding) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    for (Feeding.Draw draw : feeding.draws()) {
      Optional.ofNullable(lots.get(draw.lotId()))
          .map(like -> take(like, feeding.day(), draw.pieces(), false))
          .orElse(Map.of(draw.lotId(), draw.pieces()))
          .forEach((id, pieces) -> taken.merge(id, pieces, Integer::sum));
    }
    List<Feeding.Draw> draws = new ArrayList<>();
    taken.forEach((id, pieces) -> draws.add(new Feeding.Draw(id, pieces)));
    feedings.add(
        new Feeding(feeding.mealId(), feeding.day(), feeding.option(), feeding.meals(), draws));
  }

  /** Deliveries cannot be thrown away on the day on which they come. */
  private static boolean isThere(Lot lot, LocalDate day, boolean thrown) {
    boolean come =
        (thrown && !lot.isMoved() && !(lot.origin() instanceof Lot.InHand))
            ? lot.latest().isBefore(day)
            : !lot.takenFrom().isAfter(day);
    return come && !lot.useBy().isBefore(day);
  }

  private Map<String, Integer> take(Lot like, LocalDate day, int pieces, boolean thrown) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    int need = pieces;
    List<Lot> oldest =
        plan.lots().stream()
            .filter(lot -> lot.item().equals(like.item()))
            .filter(lot -> lot.freezer().equals(like.freezer()))
            .filter(lot -> isThere(lot, day, thrown))
            .sorted(Comparator.comparing(Lot::useBy).thenComparing(Lot::latest))
            .toList();
    for (Lot lot : oldest) {
      int count = Math.min(need, left.get(lot.id()));
      if (count > 0) {
        taken.put(lot.id(), count);
        left.merge(lot.id(), -count, Integer::sum);
        need -= count;
      }
    }
    if (need > 0 && !thrown) {
      taken.merge(like.id(), need, Integer::sum);
      left.merge(like.id(), -need, Integer::sum);
    }
    return taken;
  }
}
