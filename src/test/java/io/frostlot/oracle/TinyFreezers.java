package io.frostlot.oracle;

import io.frostlot.storage.Freezer;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One or two random freezers, for prey alone or beside food for people. */
final class TinyFreezers {
  private static final long BIG_PIECE = 50_500;
  private final Dice dice;
  private final Period planning;

  TinyFreezers(Dice dice, Period planning) {
    this.dice = dice;
    this.planning = planning;
  }

  List<Freezer> all() {
    List<Freezer> freezers = new ArrayList<>();
    boolean second = dice.has(Feature.SECOND_FREEZER);
    freezers.add(freezer("A", second ? dice.between(1, 2) : dice.between(2, 4), true));
    if (second) {
      freezers.add(freezer("B", dice.between(1, 2), !dice.oneIn(4)));
    }
    if (dice.has(Feature.FOOD_BESIDE)) {
      freezers.add(besideFood(freezers.remove(dice.between(0, freezers.size() - 1))));
    }
    return freezers;
  }

  /**
   * It holds food too, and leaves little room on some days. Prey is put there only where it is kept
   * sealed; of an only freezer always, or nothing could be bought.
   */
  private Freezer besideFood(Freezer freezer) {
    boolean sealed = !dice.has(Feature.SECOND_FREEZER) || !dice.oneIn(4);
    List<Freezer.Limit> limits = new ArrayList<>(freezer.access().limits());
    LocalDate from = planning.from().plusDays(dice.between(0, days() - 1));
    limits.add(
        new Freezer.Limit(
            new Period(from, from.plusDays(dice.between(0, 2))),
            new Litres(dice.between(0, 2) * BIG_PIECE + dice.between(0, 30) * 1000L)));
    return freezer.withAccess(
        new Freezer.Access(freezer.inUse() && sealed, Freezer.Company.FOOD, limits));
  }

  /** Holds so many big pieces, or half as many again small ones, and a bit. */
  private Freezer freezer(String name, int bigPieces, boolean inUse) {
    int life = dice.isLong() ? dice.between(15, 60) : dice.between(2, 5);
    Freezer.Life lives =
        dice.has(Feature.SMALL_PREY_LIFE)
            ? new Freezer.Life(life, Grams.of(15), dice.between(1, life))
            : Freezer.Life.of(life);
    if (dice.has(Feature.BEST_BEFORE)) {
      lives = lives.withBest(new Freezer.Best(dice.between(1, life)));
    }
    Litres usable = new Litres(bigPieces * BIG_PIECE + dice.between(0, 30) * 1000L);
    Freezer freezer = new Freezer(name, usable, "household", lives, inUse);
    return dice.has(Feature.FREEZER_LIMIT)
        ? freezer.withAccess(new Freezer.Access(inUse, Freezer.Company.NONE, limits(bigPieces)))
        : freezer;
  }

  /** Room for a big piece or two less, now and then. */
  private List<Freezer.Limit> limits(int bigPieces) {
    List<Freezer.Limit> limits = new ArrayList<>();
    for (int i = dice.between(0, 2); i > 0; i--) {
      Litres litres = new Litres(dice.between(0, bigPieces - 1) * BIG_PIECE);
      LocalDate from = planning.from().plusDays(dice.between(-1, days() + 1));
      limits.add(new Freezer.Limit(new Period(from, from.plusDays(dice.between(0, 3))), litres));
    }
    return limits;
  }

  private int days() {
    return (int) (planning.to().toEpochDay() - planning.from().toEpochDay()) + 1;
  }
}
