package io.frostlot.keeping;

import io.frostlot.units.Grams;
import io.frostlot.units.Percent;

/** The largest single piece that an animal may get, whatever the whole meal weighs. */
public sealed interface PieceLimit {
  /** The limit for an animal of the given body mass. */
  Grams forMass(Grams bodyMass);

  /** The same whatever the animal weighs. */
  record OfGrams(Grams most) implements PieceLimit {
    @Override
    public Grams forMass(Grams bodyMass) {
      return most;
    }
  }

  /** A share of body mass, so that it grows with the animal. */
  record ShareOfMass(Percent share) implements PieceLimit {
    @Override
    public Grams forMass(Grams bodyMass) {
      return bodyMass.times(share.fraction().doubleValue());
    }
  }
}
