package io.frostlot.report;

import io.frostlot.plan.Difference;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says what one answer has over another: meals first, money only where they are the same. */
record Differences(Wording wording) {
  /** What to do where little is known. */
  static final String MORE_TIME = "more time (--seconds) tells more";

  /** Of what was asked for. */
  static final String NOT_KNOWN = "Not known in the time; " + MORE_TIME + ".";

  /** One clause, without a full stop, about what is called "it". */
  String verdict(Difference difference) {
    return verdict(difference, "it");
  }

  /**
   * One clause, without a full stop.
   *
   * @param that what saves or costs, such as "going without it"
   */
  String verdict(Difference difference, String that) {
    if (!difference.sameMeals()) {
      return meals(difference) + "; so money is not compared" + onlyLate(difference);
    }
    String found = that + " " + saves(difference.found());
    if (isExact(difference)) {
      return wording.isNothing(difference.found().toDouble())
          ? "the same meals for the same money"
          : "the same meals, and " + found;
    }
    String lies = that + " " + range(difference.saves());
    return difference.saves().holdsZero()
        ? "the same meals; cannot tell for sure: between the plans found %s; with both at their best %s"
            .formatted(found, lies)
        : "the same meals, and %s between the plans found; with both at their best %s"
            .formatted(found, lies);
  }

  /** Where nothing but lateness differs, both amounts, which hold what lateness is reckoned at. */
  private String onlyLate(Difference difference) {
    Standing before = difference.before().standing();
    Standing after = difference.after().standing();
    return before.sameBeforeMoney(after)
        ? " (%s instead of %s)".formatted(rounded(after.money()), rounded(before.money()))
        : "";
  }

  private String rounded(Money money) {
    int decimals = Math.max(0, wording.currency().getDefaultFractionDigits());
    return wording.money(money.rounded(decimals));
  }

  /** How meals stand, one against the other; what rules fall short of where only that differs. */
  private static String meals(Difference difference) {
    Difference.Side after = difference.after();
    Difference.Side before = difference.before();
    return mealsOf(after).equals(mealsOf(before))
        ? "%s in both; %s instead of %s".formatted(mealsOf(after), rulesOf(after), rulesOf(before))
        : state(after) + " instead of " + state(before);
  }

  boolean isExact(Difference difference) {
    double found = difference.found().toDouble();
    Interval saves = difference.saves();
    return saves.least().isPresent()
        && saves.most().isPresent()
        && wording.isNothing((saves.least().getAsDouble() - found) * 0.99)
        && wording.isNothing((saves.most().getAsDouble() - found) * 0.99);
  }

  /** Such as "saves 12.30 EUR". */
  String saves(Money money) {
    if (money.isZero()) {
      return "costs the same";
    }
    return money.isNegative()
        ? "costs " + wording.money(money.negated()) + " more"
        : "saves " + wording.money(money);
  }

  /** Where what it saves lies with both answers at their best. */
  String atBest(Difference difference) {
    return isExact(difference) ? saves(difference.found()) : range(difference.saves());
  }

  /** Where a saving lies, such as "saves between 0.00 EUR and 12.30 EUR". */
  private String range(Interval saves) {
    if (saves.least().isPresent() && saves.most().isPresent()) {
      double least = saves.least().getAsDouble();
      double most = saves.most().getAsDouble();
      if (most <= 0) {
        return wording.isNothing(most)
            ? "costs at most " + wording.atMost(-least) + " more"
            : "costs between %s and %s more"
                .formatted(wording.atLeast(-most), wording.atMost(-least));
      }
      if (wording.isNothing(least)) {
        return "saves at most " + wording.atMost(most);
      }
      return least < 0
          ? "costs at most %s more and saves at most %s"
              .formatted(wording.atMost(-least), wording.atMost(most))
          : "saves between %s and %s".formatted(wording.atLeast(least), wording.atMost(most));
    }
    if (saves.most().isPresent()) {
      double most = saves.most().getAsDouble();
      if (wording.isNothing(most)) {
        return "may cost anything more, since no bound is known yet";
      }
      return most < 0
          ? "costs at least " + wording.atLeast(-most) + " more"
          : "saves at most " + wording.atMost(most);
    }
    if (saves.least().isPresent()) {
      double least = saves.least().getAsDouble();
      if (wording.isNothing(least)) {
        return "may save anything, since no bound is known yet";
      }
      return least < 0
          ? "costs at most " + wording.atMost(-least) + " more"
          : "saves at least " + wording.atLeast(least);
    }
    return "may be anything, since no bound is known yet";
  }

  /** What to do where a saving is known to no less than half a box charge; else empty. */
  Optional<String> unsure(Difference difference, double boxCharge) {
    Interval saves = difference.saves();
    if (!difference.sameMeals() || isExact(difference)) {
      return Optional.empty();
    }
    if (saves.least().isEmpty() || saves.most().isEmpty()) {
      return Optional.of(
          "With the packs of the best plan, not both ends of the saving are known yet: "
              + MORE_TIME
              + ".");
    }
    double width = saves.most().getAsDouble() - saves.least().getAsDouble();
    return width <= boxCharge / 2
        ? Optional.empty()
        : Optional.of(
            "With the packs of the best plan, the saving is known to within %s%s: how good plans can be at best is not known nearer; %s."
                .formatted(
                    wording.atMost(width),
                    boxCharge > 0
                        ? ", %s box charges".formatted(Wording.decimal(width / boxCharge))
                        : "",
                    MORE_TIME));
  }

  /** A cell: the least or most of an interval, or nothing known. */
  String least(Difference difference) {
    return difference.saves().least().isEmpty()
        ? "?"
        : wording.barely(difference.saves().least().getAsDouble());
  }

  /** The same upwards. */
  String most(Difference difference) {
    return difference.saves().most().isEmpty()
        ? "?"
        : wording.barely(difference.saves().most().getAsDouble());
  }

  /** How meals stand in one answer, and what rules that give way fall short of, if any do. */
  static String state(Difference.Side side) {
    return mealsOf(side) + (side.gaveWay().isEmpty() ? "" : ", " + rulesOf(side));
  }

  private static String mealsOf(Difference.Side side) {
    List<String> meals = new ArrayList<>();
    add(meals, side.standing().unmetMust(), "must-meal unmet", "must-meals unmet");
    add(meals, side.standing().unmetOther(), "other meal unmet", "other meals unmet");
    if (meals.isEmpty()) {
      meals.add(side.lateMeals() == 0 ? "every meal met on its best day" : "every meal met");
    }
    add(meals, side.lateMeals(), "meal late", "meals late");
    return String.join(", ", meals);
  }

  private static String rulesOf(Difference.Side side) {
    return side.gaveWay().isEmpty()
        ? "no soft rule short"
        : side.gaveWay().stream().map(Differences::shortBy).collect(Collectors.joining(", "));
  }

  /** Such as "adequacy short by 4 percent". */
  static String shortBy(Shortfall shortfall) {
    return rule(shortfall.rule()) + " short by " + Wording.amount(shortfall);
  }

  private static void add(List<String> state, long count, String one, String many) {
    if (count > 0) {
      state.add(Wording.count(count, one, many));
    }
  }

  /** A rule's id as words. */
  static String rule(String id) {
    return id.replace('-', ' ');
  }
}
