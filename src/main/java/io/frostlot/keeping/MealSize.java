package io.frostlot.keeping;

import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import java.math.BigDecimal;
import java.util.List;

/** How much an animal is given at a meal, by its body mass. */
public sealed interface MealSize {
  /** The window of one meal for an animal of the given mass. */
  Window windowFor(Grams bodyMass);

  /** The same where a meal may be lighter and heavier by a tenth of its target. */
  MealSize wider();

  /** Least, intended and most grams of one meal. */
  record Window(Grams least, Grams target, Grams most) {
    public Window {
      if (least.compareTo(target) > 0 || target.compareTo(most) > 0) {
        throw new IllegalArgumentException(
            "meal window out of order: " + least + ", " + target + ", " + most);
      }
    }
  }

  /** How far a meal may be from its target. */
  record Tolerance(Percent leastOfTarget, Percent mostOfTarget) {
    public Tolerance {
      Percent hundred = Percent.of("100");
      if (leastOfTarget.compareTo(hundred) > 0 || mostOfTarget.compareTo(hundred) < 0) {
        throw new IllegalArgumentException(
            "a meal window must hold its target: " + leastOfTarget + " to " + mostOfTarget);
      }
    }

    Tolerance wider() {
      BigDecimal least = leastOfTarget.value().subtract(BigDecimal.TEN).max(BigDecimal.ZERO);
      return new Tolerance(
          new Percent(least), new Percent(mostOfTarget.value().add(BigDecimal.TEN)));
    }

    Window around(Grams target) {
      return new Window(
          target.times(leastOfTarget.fraction().doubleValue()),
          target,
          target.times(mostOfTarget.fraction().doubleValue()));
    }
  }

  /** A share of body mass; of a fixed mass where the programme aims at one. */
  record ShareOfMass(Percent share, Tolerance tolerance) implements MealSize {
    @Override
    public MealSize wider() {
      return new ShareOfMass(share, tolerance.wider());
    }

    @Override
    public Window windowFor(Grams bodyMass) {
      return tolerance.around(bodyMass.times(share.fraction().doubleValue()));
    }
  }

  /** The same grams whatever the animal weighs. */
  record Fixed(Grams target, Tolerance tolerance) implements MealSize {
    @Override
    public MealSize wider() {
      return new Fixed(target, tolerance.wider());
    }

    @Override
    public Window windowFor(Grams bodyMass) {
      return tolerance.around(target);
    }
  }

  /** A table by body mass; below its first step the first holds, above the last step the last. */
  record ByMass(List<Step> steps) implements MealSize {
    /** From this body mass on, meals of least to most grams. */
    public record Step(Grams fromMass, Grams least, Grams most) {
      private Step wider() {
        long middle = (least.milligrams() + most.milligrams()) / 2;
        long tenth = Math.min(least.milligrams(), middle / 10);
        return new Step(
            fromMass, new Grams(least.milligrams() - tenth), new Grams(most.milligrams() + tenth));
      }
    }

    @Override
    public MealSize wider() {
      return new ByMass(steps.stream().map(Step::wider).toList());
    }

    public ByMass {
      steps = List.copyOf(steps);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("empty meal table");
      }
      for (int i = 1; i < steps.size(); i++) {
        if (steps.get(i).fromMass().compareTo(steps.get(i - 1).fromMass()) <= 0) {
          throw new IllegalArgumentException("meal table steps out of order at " + steps.get(i));
        }
      }
    }

    @Override
    public Window windowFor(Grams bodyMass) {
      Step found = steps.get(0);
      for (Step step : steps) {
        if (step.fromMass().compareTo(bodyMass) <= 0) {
          found = step;
        }
      }
      Grams middle = new Grams((found.least().milligrams() + found.most().milligrams()) / 2);
      return new Window(found.least(), middle, found.most());
    }
  }
}
