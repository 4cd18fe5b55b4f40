package io.frostlot.cli;

import io.frostlot.app.EnginePlanner;

/** The command line. It never waits for solver threads that do not stop. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    Terminal terminal = Terminal.ofProcess(System.getenv());
    Interruption interruption = new Interruption();
    interruption.install();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> {
          terminal.err().println(Fault.message(thrown));
          Interruption.end(ExitCode.FAULT);
        });
    int exitCode = Commands.run(new EnginePlanner(), terminal, interruption, arguments);
    terminal.out().flush();
    Interruption.end(exitCode);
  }
}
