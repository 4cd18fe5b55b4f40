package io.frostlot.keeping;

/** What may happen to a meal when food is short. */
public enum Importance {
  /** A hatchling or a recovering animal: comes before every other meal. */
  MUST,
  /** May slide within its days. */
  MAY_SLIDE,
  /** May be left out at no harm; planned and counted like one that may slide. */
  MAY_SKIP
}
