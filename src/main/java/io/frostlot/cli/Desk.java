package io.frostlot.cli;

import io.frostlot.app.Planner;
import io.frostlot.files.Problem;
import java.util.List;

/** What each command works with. */
record Desk(Planner planner, Terminal terminal, Interruption interruption) {

  /** Shows the problems, for which nothing was planned; returns the exit code. */
  int refuse(List<Problem> problems) {
    return refuse(
        problems,
        (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
            + "; nothing was planned.");
  }

  /** Shows the problems, and what comes of them; returns the exit code. */
  int refuse(List<Problem> problems, String so) {
    problems.forEach(problem -> terminal.err().println(problem));
    terminal.err().println(so);
    return ExitCode.INPUT_PROBLEMS;
  }

  /** Says that no plan was found, and what ended the search; returns the exit code. */
  int nothingFound() {
    terminal.clearStatus();
    terminal
        .err()
        .println(
            interruption.asked()
                ? "It was stopped before a plan was found."
                : "No plan was found in the time given; more time (--seconds) may do.");
    return ExitCode.NOTHING_IN_TIME;
  }
}
