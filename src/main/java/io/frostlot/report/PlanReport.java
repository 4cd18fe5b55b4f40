package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.World;
import java.util.List;

/**
 * Everything that a letter about a plan shows.
 *
 * @param outcome of the answer's plan
 * @param changes since earlier plans, at most one; none where there is nothing to compare with
 */
public record PlanReport(
    Inputs inputs, Answer.WithPlan answer, Outcome outcome, List<Changes> changes) {

  public PlanReport {
    changes = List.copyOf(changes);
  }

  World world() {
    return inputs.world();
  }

  Plan plan() {
    return answer.plan().plan();
  }

  Books books() {
    return answer.plan().books();
  }

  Wording wording() {
    return new Wording(world().scenario().currency());
  }

  Names names() {
    return new Names(world());
  }

  /** The letter, laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    return text(Sections.IN_ORDER, width);
  }

  /** What may follow the letter. */
  public String text(SecondLook look, int width) {
    return text(List.of(Sections.of(look)), width);
  }

  private String text(List<Sections.Section> sections, int width) {
    return TextPage.of(width, page -> sections.forEach(section -> section.write(this, page)));
  }

  /** The letter and all that follows it as one HTML document to read and to print. */
  public String html(List<SecondLook> looks) {
    return HtmlPage.of(
        page -> {
          Sections.IN_ORDER.forEach(section -> section.write(this, page));
          looks.forEach(look -> Sections.of(look).write(this, page));
        });
  }
}
