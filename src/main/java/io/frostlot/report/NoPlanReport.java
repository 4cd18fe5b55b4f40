package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Inputs;

/**
 * Why there is no plan.
 *
 * @param stopped was it asked to end?
 */
public record NoPlanReport(Inputs inputs, Answer answer, boolean stopped) {

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    return TextPage.of(width, this::write);
  }

  /** One HTML document to read and to print. */
  public String html() {
    return HtmlPage.of(this::write);
  }

  private void write(Page page) {
    page.title("Frostlot: no plan for " + inputs.world().scenario().name());
    if (answer instanceof Answer.Impossible impossible) {
      impossible(impossible, page);
    } else if (stopped) {
      page.say("It was stopped before a plan was found. That does not mean that there is none.");
    } else {
      page.say(
          "No plan was found in the time given. That does not mean that there is none: give it more"
              + " time (--seconds).");
    }
    if (!inputs.warnings().isEmpty()) {
      page.heading("Look at");
      inputs.warnings().forEach(warning -> page.point(Wording.inWords(warning)));
    }
  }

  static void impossible(Answer.Impossible impossible, Page page) {
    page.say("No plan can keep all of these at once:");
    impossible.clash().forEach(rule -> page.point(Wording.inWords(rule)));
    page.say(
        impossible.minimal()
            ? "Without any one of them the others could be kept."
            : "Not shown minimal: perhaps fewer of them clash already.");
  }
}
