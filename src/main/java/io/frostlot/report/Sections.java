package io.frostlot.report;

import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Simplest;
import java.util.List;

/** The table of contents of the letter: first what is to be done, then why. */
final class Sections {
  static final List<Section> IN_ORDER =
      List.of(
          new InShort(),
          new ChangesSince(),
          new NextOrders(),
          new UnderWay(),
          new FreezerMoves(),
          new ThrownAway(),
          new MealsNotMet(),
          new GaveWay(),
          new MovedMeals(),
          new NextMeals(),
          new EachAnimal(),
          new Warnings(),
          new Cautions(),
          new HowSure(),
          new Bill(),
          new BudgetUse(),
          new FreezerUse(),
          new StockOverTime(),
          new WhatIsLeft(),
          new WhatIsTight());

  private Sections() {}

  /** What follows the letter. */
  static Section of(SecondLook look) {
    if (look instanceof Simplest simplest) {
      return new SimplestPlan(simplest);
    }
    if (look instanceof BudgetPrice price) {
      return new PriceOfBudget(price);
    }
    if (look instanceof Guesses guesses) {
      return new WhatToFindOut(guesses);
    }
    return look instanceof BoxRoom room
        ? new LeftInTheBox(room)
        : new OtherHabits((Comparison) look);
  }

  /** One part of the letter; writes nothing where it has nothing to say. */
  interface Section {
    void write(PlanReport report, Page page);
  }
}
