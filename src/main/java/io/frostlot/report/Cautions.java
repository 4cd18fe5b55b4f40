package io.frostlot.report;

import io.frostlot.plan.Plan;
import io.frostlot.storage.Freezer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Hygiene and dry ice, wherever an order or a delivery is shown. */
final class Cautions implements Sections.Section {
  /** US Centers for Disease Control and Prevention, key messages on feeder rodents. */
  private static final List<String> HYGIENE =
      List.of(
          "Freezing does not kill the germs on prey animals, such as Salmonella. Wash hands with"
              + " soap right after handling prey, packs or anything that touched them.",
          "Keep prey out of the kitchen and away from food and drink. Never thaw it in the"
              + " microwave or the kitchen sink.",
          "Children of 5 and under, pregnant women and people with weakened immunity should not"
              + " handle it.");

  /** Temperature and hazards of solid carbon dioxide, UN 1845; venting: 49 CFR 173.217. */
  private static final String DRY_ICE =
      "A box may hold dry ice (-78.5 C): open it in a well aired room, do not touch it with bare"
          + " hands, keep it from children, and let the gas escape: never shut it in anything"
          + " tight.";

  /**
   * Health authorities on feeder rodents (the same key messages); the closed box: common practice.
   */
  private static final String BESIDE_FOOD =
      "%s holds food too. Frozen rodents can carry Salmonella and have made people ill: keep prey"
          + " there sealed, in a closed box of its own, apart from food and never above it; wipe up"
          + " what leaks; wash hands before touching food. A freezer for prey alone is better, and"
          + " where the rules of your place ask for one, keep to them.";

  private static final String HYGIENE_IN_SHORT =
      "Freezing does not kill germs such as Salmonella: wash hands after handling prey or packs,"
          + " keep it out of the kitchen and away from food and drink, never thaw it in the"
          + " microwave or the kitchen sink; children of 5 and under, pregnant women and people"
          + " with weakened immunity should not handle it. ";

  private static final String DRY_ICE_IN_SHORT =
      "A box may hold dry ice (-78.5 C): aired room, no bare hands, away from children, never shut"
          + " in anything tight. ";

  private static final String DEFER =
      "This is no veterinary advice: ask a vet who knows your animals, and keep to the rules of"
          + " your place.";

  @Override
  public void write(PlanReport report, Page page) {
    page.heading("When a box comes, and at every meal");
    boolean shipped =
        report.plan().orders().stream()
            .map(order -> report.world().supplier(order.slot().supplier()))
            .anyMatch(supplier -> !supplier.isPickUp());
    all(shipped || !report.world().scenario().larder().placed().isEmpty()).forEach(page::point);
    report.world().scenario().larder().freezers().stream()
        .filter(freezer -> freezer.access().company() != Freezer.Company.NONE)
        .filter(freezer -> freezer.inUse() || holdsPrey(report.plan(), freezer))
        .map(freezer -> BESIDE_FOOD.formatted(freezer.name()))
        .forEach(page::point);
  }

  private static boolean holdsPrey(Plan plan, Freezer freezer) {
    return plan.lots().stream()
        .flatMap(lot -> Stream.of(lot.freezer(), lot.firstFreezer()))
        .anyMatch(freezer.name()::equals);
  }

  /** For a paper that somebody takes home; the letter has them in full. */
  static String inShort(boolean shipped) {
    return HYGIENE_IN_SHORT + (shipped ? DRY_ICE_IN_SHORT : "") + DEFER;
  }

  /**
   * Sentences.
   *
   * @param shipped may a box come with dry ice?
   */
  static List<String> all(boolean shipped) {
    List<String> all = new ArrayList<>(HYGIENE);
    if (shipped) {
      all.add(DRY_ICE);
    }
    all.add(DEFER);
    return all;
  }
}
