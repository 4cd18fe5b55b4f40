package io.frostlot.cli;

import io.frostlot.app.Solving;

/** The command line. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    Terminal terminal = Terminal.ofProcess(System.getenv());
    Interruption interruption = new Interruption();
    interruption.install();
    int exitCode = Commands.run(new Solving(), terminal, interruption, arguments);
    terminal.out().flush();
    Interruption.end(exitCode);
  }
}
