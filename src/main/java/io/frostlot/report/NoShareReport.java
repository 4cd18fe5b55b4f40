package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.NothingShared;

/** Why there is no joint order. */
public record NoShareReport(NothingShared nothing) {

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    return TextPage.of(width, this::write);
  }

  /** One HTML document to read and to print. */
  public String html() {
    return HtmlPage.of(this::write);
  }

  private void write(Page page) {
    page.title("Frostlot: no joint order for " + nothing.group().name());
    nothing.without().member().forEach(member -> alone(member, page));
    if (nothing.without().member().isEmpty()) {
      page.say("It was stopped before there was one.");
    }
  }

  private void alone(String member, Page page) {
    page.say(
        member
            + " has no plan of its own, so that it is not known what ordering together would"
            + " save.");
    if (nothing.without().none() instanceof Answer.Impossible impossible) {
      NoPlanReport.impossible(impossible, page);
    } else if (nothing.stopped()) {
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
