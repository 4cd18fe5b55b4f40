package io.frostlot.bench;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.program.ProgramSize;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/**
 * One method on one room.
 *
 * @param seconds to each goal that was reached
 * @param peakMegabytes of the whole process during the run; empty where the system does not tell
 */
public record Measurement(
    Subject subject,
    Method method,
    Answer answer,
    Map<Goal, Double> seconds,
    OptionalLong peakMegabytes,
    ProgramSize size) {
  public Measurement {
    seconds = Map.copyOf(seconds);
  }

  OptionalDouble to(Goal goal) {
    return seconds.containsKey(goal)
        ? OptionalDouble.of(seconds.get(goal))
        : OptionalDouble.empty();
  }

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
    String times =
        Arrays.stream(Goal.values())
            .filter(seconds::containsKey)
            .map(goal -> String.format(Locale.ROOT, "%s %.1f s", goal.says(), seconds.get(goal)))
            .collect(Collectors.joining(", "));
    String cost = standing().map(it -> it.toString()).orElse("no plan");
    return subject.name() + " " + method.name() + ": " + times + "; " + cost + ", " + bound();
  }
}
