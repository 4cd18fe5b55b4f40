package io.frostlot.cli;

import io.frostlot.app.Planner;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The commands of the program. */
@Command(
    name = "frostlot",
    mixinStandardHelpOptions = true,
    versionProvider = Commands.Version.class,
    description = "Plans what frozen prey to order, from whom, when and how much.")
final class Commands implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Commands() {}

  /** Returns the exit code. */
  static int run(
      Planner planner, Terminal terminal, Interruption interruption, String... arguments) {
    CommandLine commands = new CommandLine(new Commands());
    Desk desk = new Desk(planner, terminal, interruption);
    commands.addSubcommand(new SaleCommand(desk));
    commands.addSubcommand(new FreezerCommand(desk));
    commands.addSubcommand(new CompareCommand(desk));
    commands.addSubcommand(new ExplainCommand(desk));
    commands.addSubcommand(new PlanCommand(desk));
    commands.addSubcommand(new BenchCommand(desk));
    commands.addSubcommand(new ShareCommand(desk));
    commands.addSubcommand(new SettleCommand(desk));
    commands.addSubcommand(new LedgerCommand(desk));
    commands.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
    commands.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
    commands.registerConverter(Format.class, Format::typed);
    commands.registerConverter(
        Double.class, text -> number(text, it -> new BigDecimal(it).doubleValue(), "a number"));
    commands.registerConverter(
        Integer.class, text -> number(text, Integer::valueOf, "a whole number"));
    commands.registerConverter(
        double.class, text -> number(text, it -> new BigDecimal(it).doubleValue(), "a number"));
    commands.registerConverter(int.class, text -> number(text, Integer::valueOf, "a whole number"));
    commands.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          boolean missing = Fault.isMissing(exception);
          terminal.err().println(missing ? Fault.missing(exception) : Fault.message(exception));
          return missing ? ExitCode.INPUT_PROBLEMS : ExitCode.FAULT;
        });
    try {
      return commands.execute(arguments);
    } catch (Error e) {
      terminal.err().println(Fault.message(e));
      return ExitCode.FAULT;
    }
  }

  private static <T> T number(String text, Function<String, T> reader, String expected) {
    try {
      return reader.apply(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("found \"" + text + "\", expected " + expected);
    }
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "What shall be done? plan FOLDER, for example.");
  }

  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {Fault.version()};
    }
  }
}
