package io.frostlot.app;

import io.frostlot.sharing.SampledShapley;
import io.frostlot.sharing.Way;

/** Which ways to share are shown. */
sealed interface WaysShown {
  default boolean has(Way way) {
    return this instanceof All || (this instanceof Sampled && way != Way.NUCLEOLUS);
  }

  /** The group's own. */
  record Own() implements WaysShown {}

  /** Every one, all subgroups being known. */
  record All() implements WaysShown {}

  /** Those that do not need every subgroup, and the Shapley value from a sample. */
  record Sampled(SampledShapley shapley) implements WaysShown {}
}
