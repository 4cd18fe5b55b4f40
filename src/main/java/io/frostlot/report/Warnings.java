package io.frostlot.report;

import io.frostlot.plan.OtherPrey;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What was accepted but should be looked at, and what is ordered on a guess. */
final class Warnings implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    List<String> warnings = new ArrayList<>(report.inputs().warnings());
    warnings.addAll(OtherPrey.sentences(report.world(), report.plan()));
    String guessed =
        report.plan().orders().stream()
            .flatMap(order -> order.lines().stream())
            .map(line -> line.pack().item())
            .filter(item -> item.grams().guessed())
            .map(report.names()::of)
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    if (!guessed.isEmpty()) {
      warnings.add(
          "The lightest and heaviest piece of these are guessed, from their size words: "
              + guessed
              + ". Weigh a bag and type what you find (sample_pieces, sample_g; least_g, most_g).");
    }
    if (!warnings.isEmpty()) {
      page.heading("Look at");
      warnings.forEach(warning -> page.point(Wording.inWords(warning)));
    }
  }
}
