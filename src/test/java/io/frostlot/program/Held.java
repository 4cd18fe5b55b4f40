package io.frostlot.program;

import io.frostlot.plan.Lot;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * A lot of a plan in a flow.
 *
 * @param until where it is in two flows, the last day of the first
 * @param after is this the second of them?
 */
record Held(Lot lot, Flow.Part part, Optional<Integer> until, boolean after) {
  /** Where it is in two flows: is it in this one on a day? */
  boolean isOn(int day) {
    return until.map(last -> after == (day > last)).orElse(true);
  }

  static boolean isOf(Lot lot, Flow.Part part) {
    return lot.origin().equals(part.lot().origin())
        && lot.item().equals(part.lot().item())
        && lot.freezer().equals(part.lot().freezer())
        && lot.move().equals(part.lot().move())
        && (part.inHand()
            || (lot.earliest().equals(part.lot().earliest())
                && lot.latest().equals(part.lot().latest())))
        && lot.useBy().equals(part.lot().useBy());
  }

  /** Where each night is charged: what goes within an interval is only said of its second day. */
  static boolean saysWhatIsThrown(Flow flow, int interval, IntUnaryOperator thrownOn) {
    int first = flow.days().intervals()[interval];
    int from = flow.thrown(interval).hasNoTerms() ? first + 1 : first + 2;
    return IntStream.rangeClosed(from, flow.days().intervalEnd(interval))
        .allMatch(day -> thrownOn.applyAsInt(day) == 0);
  }
}
