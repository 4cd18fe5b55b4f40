package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * No piece is eaten after its use-by: earliest arrival + life - 1, life by freezer and size of
 * prey.
 *
 * <p>For each flow and interval k: stock(k) + thrown(k) &lt;= pieces of all parts that are there
 * and usable on every day of k. Exact, because intervals end at use-by days and the oldest pieces
 * can be taken first (any other way of taking wastes more).
 */
final class ShelfLife implements Rule {
  private final World world;

  ShelfLife(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "shelf-life";
  }

  @Override
  public String says() {
    return "No piece is eaten after its use-by: "
        + world.scenario().larder().freezers().stream()
            .map(f -> f.name() + " " + f.life().days() + " days")
            .collect(Collectors.joining(", "))
        + ".";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (Flow flow : program.decisions().flows()) {
      program
          .model()
          .instance(
              flow.item().id()
                  + " lasts "
                  + flow.freezer().lifeDays(flow.item())
                  + " days in "
                  + flow.freezer().name()
                  + ".");
      for (int k = 0; k < flow.intervals(); k++) {
        Linear usable = Linear.of(flow.stock(k)).plus(flow.thrown(k));
        for (Flow.Part part : flow.parts()) {
          if (part.coversDays(flow.days().intervals()[k], flow.days().intervalEnd(k))) {
            usable.plus(-1, part.pieces());
          }
        }
        program.model().atMost(id(), usable, 0);
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Lot> lots = plan.lotsById();
    for (Lot lot : plan.lots()) {
      LocalDate useBy = world.keeps(lot).useBy();
      if (!lot.useBy().equals(useBy)) {
        books.breach(id(), "lot " + lot.id(), "use by " + lot.useBy(), "use by " + useBy);
      }
    }
    for (Feeding feeding : plan.feedings()) {
      for (Feeding.Draw draw : feeding.draws()) {
        Lot lot = lots.get(draw.lotId());
        if (lot != null && feeding.day().isAfter(lot.useBy())) {
          books.breach(
              id(), feeding.mealId(), "eaten on " + feeding.day(), "use by " + lot.useBy());
        }
      }
    }
    for (Discard discard : plan.discards()) {
      Lot lot = lots.get(discard.lotId());
      if (lot != null && discard.day().isAfter(lot.useBy())) {
        books.breach(
            id(), "lot " + lot.id(), "thrown on " + discard.day(), "gone after " + lot.useBy());
      }
    }
  }
}
