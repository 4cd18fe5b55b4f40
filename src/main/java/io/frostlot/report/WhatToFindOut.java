package io.frostlot.report;

import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import java.util.List;
import java.util.stream.Collectors;

/** Guesses that would change the next orders, and how. */
record WhatToFindOut(Guesses guesses) implements Sections.Section {
  private static final int MOST_SHOWN = 5;
  private static final int MOST_NAMED = 3;

  @Override
  public void write(PlanReport report, Page page) {
    List<Guesses.Tried> changing =
        guesses.tried().stream().filter(it -> !it.changesNothing()).limit(MOST_SHOWN).toList();
    List<Guess> notKnown =
        guesses.tried().stream()
            .filter(it -> it.changesNothing() && !it.isKnown())
            .map(Guesses.Tried::guess)
            .toList();
    List<Guess> without =
        guesses.tried().stream()
            .filter(it -> it.changesNothing() && it.isKnown())
            .map(Guesses.Tried::guess)
            .toList();
    page.heading("What to find out");
    page.say(
        changing.isEmpty()
            ? "No guess that was tried is known to change the next orders."
            : "Guesses that would change the next orders most, planned again at both ends of each.");
    changing.forEach(tried -> write(report, tried, page));
    named(report, "without effect", without, without.size(), page);
    named(report, "not known in the time", notKnown, MOST_NAMED, page);
    named(report, "not tried", guesses.notTried(), MOST_NAMED, page);
  }

  private static void write(PlanReport report, Guesses.Tried tried, Page page) {
    Guess guess = tried.guess();
    Guess.Ends ends = guess.ends();
    page.point(words(report, guess) + ", " + value(guess, ends.assumed()) + " assumed:");
    end(report, guess, ends.low(), tried.low(), page);
    end(report, guess, ends.high(), tried.high(), page);
  }

  private static void end(
      PlanReport report, Guess guess, double value, Guesses.End end, Page page) {
    if (value == guess.ends().assumed()) {
      return;
    }
    String at = value(guess, value);
    if (end.sure() == Guesses.Sure.UNKNOWN) {
      page.detail(
          at,
          "Not known in the time: what was found is worse in meals or soft rules, and not proven best.");
      return;
    }
    OrderChangeText text = new OrderChangeText(report.wording(), report.names()::supplier);
    String changes =
        end.moved().isZero()
            ? "The same next orders."
            : end.changes().stream().map(text::of).collect(Collectors.joining(" "));
    boolean sameMeals = end.side().standing().sameBeforeMoney(report.answer().plan().standing());
    page.detail(
        at,
        (sameMeals ? "" : Differences.state(end.side()) + ". ")
            + changes
            + (end.sure() == Guesses.Sure.PROVEN ? "" : " Perhaps: this is not proven best."));
  }

  private static void named(PlanReport report, String what, List<Guess> some, int most, Page page) {
    if (!some.isEmpty()) {
      int more = some.size() - Math.min(most, some.size());
      page.point(
          some.stream()
              .limit(most)
              .map(guess -> words(report, guess))
              .collect(
                  Collectors.joining(
                      "; ", what + ": ", more > 0 ? "; and " + more + " more." : ".")));
    }
  }

  private static String words(PlanReport report, Guess guess) {
    return switch (guess.kind()) {
      case PIECE_GRAMS ->
          "grams of a piece of " + report.names().of(report.world().items().get(guess.of()));
      case ANIMAL_GRAMS -> "grams of " + guess.of();
      case OLD_PRICES -> "prices of " + report.names().supplier(guess.of()) + ", an old sheet";
      case LATER_PRICES -> "prices after the planning days";
      case FREEZER_LITRES -> "litres of " + guess.of();
      case PREY_LITRES -> "litres that prey takes in the freezers";
      case SKIPPED_MEALS -> "meals that are refused";
    };
  }

  private static String value(Guess guess, double value) {
    String unit =
        switch (guess.kind()) {
          case PIECE_GRAMS, ANIMAL_GRAMS -> "g";
          case FREEZER_LITRES -> "l";
          case OLD_PRICES, LATER_PRICES, PREY_LITRES, SKIPPED_MEALS -> "%";
        };
    return Wording.decimal(value) + Wording.NO_BREAK + unit;
  }
}
