package io.frostlot.app;

import io.frostlot.plan.Contents;
import io.frostlot.plan.Demand;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Holdings;
import io.frostlot.plan.Solved;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is at risk where a freezer fails while a plan is followed. */
final class FreezerLosses {
  private static final int THAWED_DAYS = 2;
  private final Solved plan;

  FreezerLosses(Solved plan) {
    this.plan = plan;
  }

  FreezerFinding.Loss of(FreezerLoad load, LocalDate day) {
    long room = roomElsewhere(load, day);
    List<FreezerFinding.AtRisk> atRisk = new ArrayList<>();
    for (Contents.Pieces pieces : dearestByLitre(load, day)) {
      long each = pieces.item().litres().microlitres();
      int fit = each == 0 ? pieces.count() : (int) Math.min(pieces.count(), room / each);
      room -= fit * each;
      int eaten = Math.min(pieces.count() - fit, couldBeEaten(pieces.item(), day));
      atRisk.add(
          new FreezerFinding.AtRisk(pieces.item(), pieces.count(), pieces.worth(), fit, eaten));
    }
    return new FreezerFinding.Loss(load.freezer(), day, load.share(day), atRisk);
  }

  private List<Contents.Pieces> dearestByLitre(FreezerLoad load, LocalDate day) {
    return new Holdings(plan.world(), plan.plan())
        .on(load.freezer(), day).pieces().stream()
            .sorted(Comparator.comparingDouble(FreezerLosses::perLitre).reversed())
            .toList();
  }

  private static double perLitre(Contents.Pieces pieces) {
    double litres = pieces.item().litres().times(pieces.count()).toDouble();
    return litres > 0 ? pieces.worth().toDouble() / litres : Double.POSITIVE_INFINITY;
  }

  private long roomElsewhere(FreezerLoad lost, LocalDate day) {
    return plan.outcome().freezers().stream()
        .filter(load -> load.freezer().inUse() && !load.freezer().equals(lost.freezer()))
        .mapToLong(load -> load.free(day).microlitres())
        .sum();
  }

  /** Pieces that meals of the day and the next two could take, the most that each could. */
  private int couldBeEaten(Item item, LocalDate day) {
    int pieces = 0;
    for (Demand demand : plan.world().demands()) {
      LocalDate best = demand.meal().days().best();
      if (!best.isBefore(day) && !best.isAfter(day.plusDays(THAWED_DAYS))) {
        pieces +=
            demand.meal().count()
                * demand.options().stream()
                    .filter(option -> option.item().equals(item))
                    .mapToInt(option -> option.pieces())
                    .max()
                    .orElse(0);
      }
    }
    return pieces;
  }
}
