package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Simplest;
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

  /**
   * The end of the letter, which may follow later: the plan beside habits.
   *
   * @param comparison with habits under the same rules; nothing is written where there is none
   */
  public String habits(Comparison comparison, int width) {
    return text(List.of(new OtherHabits(comparison)), width);
  }

  /** What may follow the letter: what a plan without the budget has over the one shown. */
  public String budget(Difference without, int width) {
    return text(List.of(new PriceOfBudget(without)), width);
  }

  /** What may follow the letter: the simplest plan beside the one shown. */
  public String simplest(Simplest simplest, int width) {
    return text(List.of(new SimplestPlan(simplest)), width);
  }

  private String text(List<Sections.Section> sections, int width) {
    Page page = new Page(width);
    sections.forEach(section -> section.write(this, page));
    return page.toString();
  }
}
