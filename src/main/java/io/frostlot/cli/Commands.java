package io.frostlot.cli;

import io.frostlot.app.Planner;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

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
    registerConverters(commands);
    commands.setParameterExceptionHandler((wrong, typed) -> mistyped(wrong));
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

  private static void registerConverters(CommandLine commands) {
    commands.registerConverter(Format.class, Format::typed);
    for (Class<Double> type : List.of(Double.class, double.class)) {
      commands.registerConverter(
          type, text -> read(text, it -> new BigDecimal(it).doubleValue(), "a number"));
    }
    for (Class<Integer> type : List.of(Integer.class, int.class)) {
      commands.registerConverter(type, text -> read(text, Integer::valueOf, "a whole number"));
    }
    commands.registerConverter(Long.class, text -> read(text, Long::valueOf, "a whole number"));
    commands.registerConverter(
        BigDecimal.class, text -> read(text, Commands::decimal, "a number such as 12.5"));
    commands.registerConverter(
        LocalDate.class, text -> read(text, LocalDate::parse, "a date such as 2031-01-31"));
  }

  /** Without exponents, of which a few characters may be a very long number. */
  private static BigDecimal decimal(String text) {
    if (!text.matches("[+-]?[0-9]{1,15}([.][0-9]{1,15})?")) {
      throw new NumberFormatException(text);
    }
    return new BigDecimal(text);
  }

  /** What is wrong, and where all options stand; only who typed no command is shown them all. */
  private static int mistyped(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(wrong.getMessage());
    boolean guessed = UnmatchedArgumentException.printSuggestions(wrong, err);
    if (command.getParent() != null) {
      err.println("All options: " + command.getCommandSpec().qualifiedName() + " --help");
    } else if (!guessed) {
      command.usage(err);
    }
    return ExitCode.INPUT_PROBLEMS;
  }

  private static <T> T read(String text, Function<String, T> reader, String expected) {
    try {
      return reader.apply(text);
    } catch (NumberFormatException | DateTimeParseException e) {
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
