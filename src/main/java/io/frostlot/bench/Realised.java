package io.frostlot.bench;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;

/**
 * What the estimates of a drawn room came to in a plan.
 *
 * @param growing share of the animals that grow
 * @param shipping share of the cash that goes into shipping, packing and other charges of orders
 * @param full for each closing of the carriers, how full the fullest freezer gets in the two weeks
 *     before it, 1 being full
 */
public record Realised(double growing, double shipping, List<Double> full) {
  public Realised {
    full = List.copyOf(full);
  }

  /** Follows the plan day by day. */
  static Realised of(DrawnRoom room, World world, Answer.Judged judged) {
    Books books = judged.books();
    double cash = books.total(Books.Account.CASH).toDouble();
    double charges =
        judged.plan().orders().stream()
            .map(Order::slot)
            .map(slot -> books.ledger(slot).allCharges())
            .reduce(Money.ZERO, Money::plus)
            .toDouble();
    List<FreezerLoad> loads = Outcome.of(world, judged.plan()).freezers();
    return new Realised(
        growing(room.scenario().collection().animals()),
        cash > 0 ? charges / cash : 0,
        room.calibration().closings().stream().map(closing -> fullest(loads, closing)).toList());
  }

  static double growing(List<Animal> animals) {
    long growing =
        animals.stream().filter(animal -> !(animal.growth() instanceof Curve.Constant)).count();
    return (double) growing / animals.size();
  }

  private static double fullest(List<FreezerLoad> loads, Period closing) {
    double most = 0;
    for (LocalDate day = closing.from().minusDays(13);
        !day.isAfter(closing.from().plusDays(3));
        day = day.plusDays(1)) {
      for (FreezerLoad load : loads) {
        most = Math.max(most, load.share(day));
      }
    }
    return most;
  }
}
