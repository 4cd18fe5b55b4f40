package io.frostlot.program;

/** The parts of the comparison of answers, in their order. */
enum Level {
  UNMET_MUST,
  UNMET_OTHER,
  SHORTFALL,
  MONEY
}
