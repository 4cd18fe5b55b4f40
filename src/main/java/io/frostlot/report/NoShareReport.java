package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Group;

/**
 * Why there is no joint order.
 *
 * @param alone so many members, the first, have a plan of their own
 * @param none the answer of the next
 * @param stopped was it asked to end?
 */
public record NoShareReport(Group group, int alone, Answer none, boolean stopped) {

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    return TextPage.of(width, this::write);
  }

  /** One HTML document to read and to print. */
  public String html() {
    return HtmlPage.of(this::write);
  }

  private void write(Page page) {
    page.title("Frostlot: no joint order for " + group.name());
    if (alone == group.names().size()) {
      page.say("It was stopped before the members' orders were put together.");
      return;
    }
    String member = group.names().get(alone);
    page.say(
        member
            + " has no plan of its own, so that it is not known what ordering together would"
            + " save.");
    if (none instanceof Answer.Impossible impossible) {
      NoPlanReport.impossible(impossible, page);
    } else if (stopped) {
      page.say("It was stopped before one was found. That does not mean that there is none.");
    } else {
      page.say(
          "None was found in the time given. That does not mean that there is none: give it more"
              + " time (--seconds), or plan what "
              + member
              + " needs by itself (plan).");
    }
  }
}
