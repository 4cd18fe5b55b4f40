package io.frostlot.report;

import io.frostlot.plan.Fed;
import java.util.List;
import java.util.stream.Collectors;

/** What each animal is fed, beside its programme. */
final class EachAnimal implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    List<Fed> all = Fed.of(report.world(), report.plan());
    if (all.isEmpty()) {
      return;
    }
    page.heading("Each animal");
    Table table =
        Table.of("", ">grams", ">programme", ">%", ">% in any four", ">met", ">late", ">unmet");
    for (Fed fed : all) {
      table.row(
          fed.animal(),
          Wording.decimal(fed.grams().planned().toDouble()),
          Wording.decimal(fed.grams().target().toDouble()),
          rounded(100 * fed.grams().share()),
          inAnyFour(fed),
          String.valueOf(fed.meals().met()),
          String.valueOf(fed.meals().late()),
          String.valueOf(fed.meals().unmet()));
    }
    page.table(table);
    page.say(
        "The programme is what the targets of all planned meals come to; in any four: the grams of"
            + " four meals in a row beside the targets of those that are met, lowest and highest.");
    String off =
        all.stream()
            .filter(Fed::differsFromForecast)
            .map(Fed::animal)
            .collect(Collectors.joining(", "));
    if (!off.isEmpty()) {
      page.say(
          "Growth was forecast with the programme, and the grams planned differ from it by 5 % or"
              + " more for "
              + off
              + ": weigh them sooner, and plan again with what they weigh then.");
    }
  }

  static String rounded(double percent) {
    return String.valueOf(Math.round(percent));
  }

  static String inAnyFour(Fed fed) {
    return fed.fourMeals().isEmpty()
        ? "-"
        : rounded(fed.leanestFour()) + "-" + rounded(fed.richestFour());
  }
}
