package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Optional;

/**
 * Judges plans of one world, by every rule and day by day.
 *
 * @param rules of the world, made once
 */
record Judge(World world, List<Rule> rules) {
  Judge(World world) {
    this(world, Rules.of(world));
  }

  /** What a plan of any making comes to; empty where it breaks a rule or cannot be followed. */
  Optional<Answer.Judged> judge(Plan plan) {
    return Optional.of(byRules(plan))
        .filter(judged -> judged.books().breaches().isEmpty())
        .filter(judged -> Replay.of(world, plan).holds());
  }

  /** By the rules alone, breaches and all. */
  Answer.Judged byRules(Plan plan) {
    Books books = new Books();
    rules.forEach(rule -> rule.judge(plan, books));
    return new Answer.Judged(plan, books);
  }
}
