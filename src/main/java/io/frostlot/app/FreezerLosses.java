package io.frostlot.app;

import io.frostlot.plan.Demand;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Solved;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What is at risk where a freezer fails while a plan is followed. */
final class FreezerLosses {
  private static final int THAWED_DAYS = 2;
  private final Solved plan;

  FreezerLosses(Solved plan) {
    this.plan = plan;
  }

  private record Content(Item item, int pieces, BigDecimal perPiece) {
    double perLitre() {
      double litres = item.litres().toDouble();
      return litres > 0 ? perPiece.doubleValue() / litres : Double.POSITIVE_INFINITY;
    }
  }

  FreezerFinding.Loss of(FreezerLoad load, LocalDate day) {
    long room = roomElsewhere(load, day);
    List<FreezerFinding.AtRisk> atRisk = new ArrayList<>();
    for (Content content : contents(load, day)) {
      long each = content.item().litres().microlitres();
      int fit = each == 0 ? content.pieces() : (int) Math.min(content.pieces(), room / each);
      room -= fit * each;
      int eaten = Math.min(content.pieces() - fit, couldBeEaten(content.item(), day));
      atRisk.add(
          new FreezerFinding.AtRisk(
              content.item(),
              content.pieces(),
              new Money(content.perPiece().multiply(BigDecimal.valueOf(content.pieces())))
                  .rounded(plan.world().decimals()),
              fit,
              eaten));
    }
    return new FreezerFinding.Loss(load.freezer(), day, load.share(day), atRisk);
  }

  private List<Content> contents(FreezerLoad load, LocalDate day) {
    Levels levels = new Levels(plan.plan());
    SortedMap<String, Integer> pieces = new TreeMap<>();
    for (Lot lot : plan.plan().lots()) {
      if (lot.freezer().equals(load.freezer().name())) {
        pieces.merge(lot.item().id(), levels.beforeMeals(lot, day), Integer::sum);
      }
    }
    return pieces.entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .map(entry -> plan.world().items().get(entry.getKey()))
        .map(item -> new Content(item, pieces.get(item.id()), perPiece(item)))
        .sorted(Comparator.comparingDouble(Content::perLitre).reversed())
        .toList();
  }

  /** The least regular pack price per piece, to seven digits; zero where nobody sells it. */
  private BigDecimal perPiece(Item item) {
    return plan.world().scenario().suppliers().stream()
        .flatMap(supplier -> supplier.sheet().packs().stream())
        .filter(pack -> pack.piecesOf(item) > 0)
        .map(FreezerLosses::perPiece)
        .min(BigDecimal::compareTo)
        .orElse(BigDecimal.ZERO);
  }

  private static BigDecimal perPiece(Pack pack) {
    BigDecimal pieces = BigDecimal.valueOf(pack.pieces());
    return pack.price().amount().divide(pieces, MathContext.DECIMAL32);
  }

  private long roomElsewhere(FreezerLoad lost, LocalDate day) {
    return plan.outcome().freezers().stream()
        .filter(load -> load.freezer().inUse() && !load.freezer().equals(lost.freezer()))
        .mapToLong(
            load -> Math.max(0, load.freezer().usable().microlitres() - load.on(day).microlitres()))
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
