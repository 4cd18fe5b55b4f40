package io.frostlot.cli;

/** What the program ends with. */
final class ExitCode {
  static final int PLAN = 0;

  /** A fault of the program, or output that could not be written. */
  static final int FAULT = 1;

  static final int INPUT_PROBLEMS = 2;
  static final int IMPOSSIBLE = 3;
  static final int NOTHING_IN_TIME = 4;

  private ExitCode() {}
}
