package io.frostlot.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * When goals were first reached.
 *
 * @param seconds to each goal that was reached
 */
public record Reached(Map<Goal, Double> seconds) {
  public Reached {
    seconds = Map.copyOf(seconds);
  }

  OptionalDouble to(Goal goal) {
    return seconds.containsKey(goal)
        ? OptionalDouble.of(seconds.get(goal))
        : OptionalDouble.empty();
  }

  /** In one line. */
  String says() {
    return Arrays.stream(Goal.values())
        .filter(seconds::containsKey)
        .map(goal -> String.format(Locale.ROOT, "%s %.1f s", goal.says(), seconds.get(goal)))
        .collect(Collectors.joining(", "));
  }
}
