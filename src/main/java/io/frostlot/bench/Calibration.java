package io.frostlot.bench;

import io.frostlot.units.Period;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * What makes a room hard, estimated from what its animals eat and never drawn again.
 *
 * <p>Twice carriers do not ship; the second closing is as long as the animals need to eat what they
 * eat in the first. Litres of all freezers = (kg eaten from a week before the first closing to a
 * week after + kg in opened packs) / 0.45 / 0.9, so that they are about 90 % full before each. An
 * order brings what is eaten in that time; a box takes what an order has over its usual boxes; the
 * charge of a box is share / (1 - share) x goods / boxes, with a share of 0.22 and boxes the most
 * of orders and kg / (0.8 x box kg).
 *
 * @param closings of the carriers, two
 * @param litres of all freezers
 * @param orderKg kilograms of a usual order
 * @param orderValue goods of a usual order, in money
 * @param box what boxes take and cost
 */
public record Calibration(
    List<Period> closings, double litres, double orderKg, double orderValue, Box box) {
  private static final double FULL = 0.9;
  private static final double SHIPPING = 0.22;
  private static final double FILLED = 0.8;

  /** Kilograms of a box, and the charge of one at the usual carrier, in money. */
  public record Box(double boxKg, double charge) {}

  static Calibration of(RoomSize size, Period planning, Appetite appetite) {
    List<Period> closings = closings(size, planning, appetite);
    Period bridged =
        new Period(closings.get(0).from().minusDays(7), closings.get(0).to().plusDays(7));
    double opened = appetite.openedKg(size.packFactor());
    double orderKg = appetite.kg(bridged);
    double litres = Appetite.litres(orderKg + opened) / FULL;
    double orders = Math.max(1, appetite.kg() / orderKg);
    double boxKg = Math.max(1, Math.round(2 * orderKg / size.boxesInOrder()) / 2.0);
    double boxes = Math.max(orders, appetite.kg() / (FILLED * boxKg));
    double charge = SHIPPING / (1 - SHIPPING) * appetite.goods() / boxes;
    return new Calibration(
        closings, litres, orderKg, appetite.goods() / orders, new Box(boxKg, charge));
  }

  private static List<Period> closings(RoomSize size, Period planning, Appetite appetite) {
    long days = ChronoUnit.DAYS.between(planning.from(), planning.to()) + 1;
    int firstDays = size.isBrief() ? 8 : 28;
    Period first =
        new Period(
            planning.from().plusDays(days * 27 / 100),
            planning.from().plusDays(days * 27 / 100 + firstDays - 1));
    Period second = appetite.eating(appetite.kg(first), planning.from().plusDays(days * 64 / 100));
    return List.of(first, second);
  }
}
