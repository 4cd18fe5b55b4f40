package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How far the plan may be from the best possible: in money, in percent and in box charges. */
final class HowSure implements Sections.Section {
  private static final double[] SHARES = {0.1, 0.2, 0.25, 1 / 3.0, 0.5, 2 / 3.0, 0.75, 1, 1.5};
  private static final String[] WORDS = {
    "a tenth of a box charge", "a fifth of a box charge", "a quarter of a box charge",
    "a third of a box charge", "half a box charge", "two thirds of a box charge",
    "three quarters of a box charge", "one box charge", "one and a half box charges"
  };

  @Override
  public void write(PlanReport report, Page page) {
    page.heading("How sure this is");
    if (report.answer() instanceof Answer.Proven) {
      page.say(
          "Proven best: under these prices, dates and rules no plan meets more of the meals, and"
              + " none that meets as many costs less.");
      return;
    }
    Optional<Gap> gap = Gap.of(report.answer());
    Optional<Gap> amongAsGood = Gap.amongAsGood(report.answer());
    if (gap.isEmpty() && amongAsGood.filter(it -> !isAll(report, it)).isPresent()) {
      page.say(
          "The best plan found in the time given. Of all plans that meet as many meals and fall no"
              + " shorter of what gives way, its money is "
              + words(report, amongAsGood.get())
              + ". Whether less could fall short is not known yet. More time (--seconds) may tell.");
      return;
    }
    if (gap.isEmpty()) {
      page.say(
          "The best plan found in the time given. How far it is from the best possible is not known"
              + " yet: that as many meals and margins as possible are met comes first and is not"
              + " proven. More time (--seconds) may tell.");
      return;
    }
    if (isAll(report, gap.get())) {
      page.say(
          "The best plan found in the time given. That no plan meets more of the meals is proven;"
              + " how little money could do is not known yet. More time (--seconds) may tell.");
      return;
    }
    page.say(
        "The best plan found in the time given. That no plan meets more of the meals is proven; its"
            + " money is "
            + words(report, gap.get())
            + ". More time (--seconds) may find a better one or prove this one.");
  }

  static String inShort(PlanReport report) {
    if (report.answer() instanceof Answer.Proven) {
      return "proven best.";
    }
    return Gap.of(report.answer())
        .filter(gap -> !isAll(report, gap))
        .map(gap -> words(report, gap) + ".")
        .or(
            () ->
                Gap.amongAsGood(report.answer())
                    .filter(gap -> !isAll(report, gap))
                    .map(gap -> words(report, gap) + ", of plans that fall no shorter."))
        .orElse("the best found; how far from the best possible is not known.");
  }

  /** A gap as large as the cost itself tells nothing. */
  private static boolean isAll(PlanReport report, Gap gap) {
    return gap.amount() >= report.answer().plan().standing().money().toDouble();
  }

  private static String words(PlanReport report, Gap gap) {
    String boxes =
        gap.boxCharges().stream()
            .mapToObj(charges -> "; " + boxCharges(charges))
            .collect(Collectors.joining());
    return "at most %s above the best possible (%s of cash and reckoned%s)"
        .formatted(report.wording().atMost(gap.amount()), percent(gap.percent()), boxes);
  }

  private static String percent(double percent) {
    return String.format(Locale.ROOT, "%.1f", percent) + Wording.NO_BREAK + "%";
  }

  /** In words up to one and a half, rounded up to the next fraction. */
  static String boxCharges(double charges) {
    if (charges < 0.05) {
      return "less than a twentieth of a box charge";
    }
    for (int i = 0; i < SHARES.length; i++) {
      if (charges <= SHARES[i] + 0.005) {
        return WORDS[i];
      }
    }
    return String.format(Locale.ROOT, "%.1f box charges", Math.ceil(charges * 10) / 10);
  }
}
