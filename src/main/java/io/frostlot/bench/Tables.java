package io.frostlot.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Measurements as text.
 *
 * @param day of the measuring
 * @param version of the program
 * @param cold seconds from the start of the process to the first plan; empty where there was none
 */
public record Tables(
    LocalDate day, String version, OptionalDouble cold, List<Measurement> measurements) {
  public Tables {
    measurements = List.copyOf(measurements);
  }

  /** RFC 4180, one line for each measurement; the machine is in lines that begin with #. */
  public String csv() {
    StringBuilder text = new StringBuilder();
    text.append("# ").append(top()).append("\r\n");
    text.append("size,seed,method,limit_s,first_plan_s,to_1_percent_s,to_half_percent_s,");
    text.append(
        "to_half_box_s,proof_s,unmet_must,unmet_other,shortfall,cost,bound,bound_of_as_good,peak_mb,");
    text.append("classes,rows,columns\r\n");
    for (Measurement it : measurements) {
      List<String> cells = new ArrayList<>();
      cells.addAll(
          List.of(
              it.subject().size(),
              it.subject().seed(),
              it.method().name(),
              Long.toString(it.method().most().toSeconds())));
      Arrays.stream(Goal.values())
          .map(goal -> Cells.number(it.reached().to(goal), ""))
          .forEach(cells::add);
      cells.addAll(standing(it));
      cells.add(Cells.number(it.bound(), ""));
      cells.add(Cells.number(it.boundOfAsGood(), ""));
      cells.add(Cells.number(it.peakMegabytes()));
      cells.add(Integer.toString(it.size().classes()));
      cells.add(Integer.toString(it.size().rows()));
      cells.add(Integer.toString(it.size().columns()));
      text.append(String.join(",", cells)).append("\r\n");
    }
    return text.toString();
  }

  private static List<String> standing(Measurement it) {
    return it.standing()
        .map(
            s ->
                List.of(
                    Integer.toString(s.unmetMust()),
                    Integer.toString(s.unmetOther()),
                    Long.toString(s.shortfall()),
                    s.money().toText(2)))
        .orElse(List.of("", "", "", ""));
  }

  private String top() {
    return Cells.top(version, day);
  }

  /** Medians over the seeds, how much faster, and what the drawn rooms came to. */
  public String markdown() {
    StringBuilder text = new StringBuilder();
    text.append(top()).append(".\n\n");
    text.append("Cold, from the start of the process to the first plan of the first room: ");
    text.append(cold.isPresent() ? Cells.number(cold, "") + " s" : "none within the limit")
        .append(". All other times are warm, in seconds, medians");
    text.append(" over the seeds; - is not reached within the limit.\n\n");
    List<String> head = new ArrayList<>(List.of("size", "method", "rooms", "limit"));
    Arrays.stream(Goal.values()).map(Goal::says).forEach(head::add);
    head.addAll(
        List.of("cost", "bound", "bound of as good", "peak MB", "classes", "rows", "columns"));
    Cells.head(text, head);
    groups().values().forEach(group -> Cells.row(text, medians(group)));
    text.append('\n');
    ratios(text);
    realised(text);
    return text.toString();
  }

  private Map<List<String>, List<Measurement>> groups() {
    return measurements.stream()
        .collect(
            Collectors.groupingBy(
                it -> List.of(it.subject().size(), it.method().name()),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  private static List<String> medians(List<Measurement> group) {
    Measurement first = group.get(0);
    List<String> cells = new ArrayList<>();
    cells.add(first.subject().size());
    cells.add(first.method().name());
    cells.add(Integer.toString(group.size()));
    cells.add(Long.toString(first.method().most().toSeconds()));
    for (Goal goal : Goal.values()) {
      cells.add(Cells.finite("%.1f", toGoal(group, goal)));
    }
    cells.add(
        Cells.finite(
            "%.2f",
            median(group, it -> it.standing().map(s -> s.money().toDouble()).orElse(INFINITE))));
    cells.add(Cells.finite("%.2f", median(group, it -> it.bound().orElse(INFINITE))));
    cells.add(Cells.finite("%.2f", median(group, it -> it.boundOfAsGood().orElse(INFINITE))));
    cells.add(
        Cells.finite(
            "%.0f",
            median(
                group,
                it -> it.peakMegabytes().isPresent() ? it.peakMegabytes().getAsLong() : INFINITE)));
    cells.add(Cells.finite("%.0f", median(group, it -> it.size().classes())));
    cells.add(Cells.finite("%.0f", median(group, it -> it.size().rows())));
    cells.add(Cells.finite("%.0f", median(group, it -> it.size().columns())));
    return cells;
  }

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static double toGoal(List<Measurement> group, Goal goal) {
    return median(group, it -> it.reached().to(goal).orElse(INFINITE));
  }

  static double median(List<Measurement> group, ToDoubleFunction<Measurement> value) {
    double[] sorted = group.stream().mapToDouble(value).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  private void ratios(StringBuilder text) {
    Map<String, List<List<Measurement>>> bySize =
        groups().values().stream()
            .collect(
                Collectors.groupingBy(
                    group -> group.get(0).subject().size(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    bySize.forEach(
        (size, methods) -> {
          if (methods.size() == 2) {
            text.append(size).append(", times as fast to 0.5 %: ");
            text.append(ratio(methods.get(0), methods.get(1))).append(".\n");
          }
        });
  }

  /** How many times longer the second method takes to half a percent. */
  static String ratio(List<Measurement> fast, List<Measurement> slow) {
    double ours = toGoal(fast, Goal.HALF_PERCENT);
    double other = toGoal(slow, Goal.HALF_PERCENT);
    if (Double.isInfinite(ours)) {
      return "not known, for the first does not reach it";
    }
    double cut = slow.get(0).method().most().toMillis() / 1e3;
    return Double.isInfinite(other)
        ? String.format(Locale.ROOT, ">= %.1f", cut / ours)
        : String.format(Locale.ROOT, "%.1f", other / ours);
  }

  private void realised(StringBuilder text) {
    text.append("\nWhat the drawn rooms came to in the plans found, in percent:\n\n");
    Cells.head(text, List.of("room", "method", "growing", "shipping of cash", "fullest freezer"));
    for (Measurement it : measurements) {
      it.realised()
          .ifPresent(
              real ->
                  Cells.row(
                      text,
                      List.of(
                          it.subject().name(),
                          it.method().name(),
                          Cells.finite("%.0f", 100 * real.growing()),
                          Cells.finite("%.0f", 100 * real.shipping()),
                          real.full().stream()
                              .map(share -> Cells.finite("%.0f", 100 * share))
                              .collect(Collectors.joining(", then ")))));
    }
  }
}
