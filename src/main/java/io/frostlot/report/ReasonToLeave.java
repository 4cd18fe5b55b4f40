package io.frostlot.report;

import io.frostlot.plan.Shared;
import java.util.List;

/** Whether a member or a subgroup would pay less without the others. */
record ReasonToLeave(Shared.Contentment found, Wording wording) {

  void write(Page page) {
    page.heading("Has anybody a reason to leave");
    for (List<String> better : found.better()) {
      page.point(ShareReport.names(better) + ": better off without the others, at these shares.");
    }
    for (List<String> unsettled : found.unsettled()) {
      page.point(
          ShareReport.names(unsettled)
              + ": not known, since what ordering without the others would cost is not known well"
              + " enough.");
    }
    page.say(
        found.better().isEmpty() && found.unsettled().isEmpty()
            ? "Nobody has a reason to leave: no member or subgroup pays less by itself."
            : "No other member or subgroup has a reason to leave.");
    if (!wording.isNothing(found.pain())) {
      page.say(
          "No way of sharing leaves everybody content; the least that the worst-off members pay"
              + " too much is "
              + wording.atLeast(found.pain())
              + ", with the shares of the nucleolus.");
    }
  }
}
