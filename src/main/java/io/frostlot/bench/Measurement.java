package io.frostlot.bench;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.program.ProgramSize;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * One method on one room.
 *
 * @param reached goals
 * @param peakMegabytes of the whole process during the run; empty where the system does not tell
 */
public record Measurement(
    Subject subject,
    Method method,
    Answer answer,
    Reached reached,
    OptionalLong peakMegabytes,
    ProgramSize size) {
  private Optional<Answer.WithPlan> found() {
    return Optional.of(answer)
        .filter(Answer.WithPlan.class::isInstance)
        .map(Answer.WithPlan.class::cast);
  }

  Optional<Standing> standing() {
    return found().map(plan -> plan.plan().standing());
  }

  /** Of the money of plans that are no worse before it. */
  OptionalDouble boundOfAsGood() {
    return found().map(Answer.WithPlan::boundOfAsGood).orElse(OptionalDouble.empty());
  }

  OptionalDouble bound() {
    return found().map(Answer.WithPlan::bound).orElse(OptionalDouble.empty());
  }

  Optional<Realised> realised() {
    return found()
        .flatMap(
            plan ->
                subject.drawn().stream()
                    .findFirst()
                    .map(room -> Realised.of(room, subject.world(), plan.plan())));
  }

  /** In one line. */
  public String says() {
    String plan = standing().map(it -> Cells.says(it, bound())).orElse("no plan");
    return "%s %s: %s; %s".formatted(subject.name(), method.name(), reached.says(), plan);
  }
}
