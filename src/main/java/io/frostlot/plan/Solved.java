package io.frostlot.plan;

import java.util.OptionalDouble;

/** A world and the answer that was found for it. */
public record Solved(World world, Answer.WithPlan answer) {
  public Standing standing() {
    return answer.plan().standing();
  }

  public Plan plan() {
    return answer.plan().plan();
  }

  public Outcome outcome() {
    return Outcome.of(world, plan());
  }

  /** Meals after their best day. */
  public int lateMeals() {
    return outcome().lateMeals();
  }

  /** Money of the plan found. */
  public double cost() {
    return standing().money().toDouble();
  }

  /**
   * The same with what is known of a world that allows all that this one does, and more: what
   * cannot be had there cannot be had here.
   */
  public Solved atBestAs(Solved relaxed) {
    OptionalDouble there = relaxed.answer().bound();
    if (there.isEmpty()
        || !standing().sameBeforeMoney(relaxed.standing())
        || answer.bound().orElse(Double.NEGATIVE_INFINITY) >= there.getAsDouble()) {
      return this;
    }
    return known(answer.plan(), there.getAsDouble());
  }

  /**
   * The same with a plan of a world that allows less, where that is better: it can be followed here
   * too, but that none is better there says nothing of what can be had here.
   */
  public Solved orBetter(Solved stricter) {
    Answer.Judged other = stricter.answer().plan();
    if (other.standing().compareTo(standing()) >= 0) {
      return this;
    }
    return answer.bound().isPresent() && standing().sameBeforeMoney(other.standing())
        ? known(other, answer.bound().getAsDouble())
        : new Solved(world, new Answer.BestFound(other, OptionalDouble.empty()));
  }

  private Solved known(Answer.Judged plan, double least) {
    double cost = plan.standing().money().toDouble();
    double bound = Math.min(least, cost);
    double halfUnit = Math.pow(10, -world.decimals()) / 2;
    return new Solved(
        world,
        bound >= cost - halfUnit
            ? new Answer.Proven(plan, bound)
            : new Answer.BestFound(plan, OptionalDouble.of(bound)));
  }
}
