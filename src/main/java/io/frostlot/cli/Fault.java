package io.frostlot.cli;

import java.util.Arrays;

/** Tells the user of a fault of the program: what to report, and no stack trace. */
final class Fault {
  private static final String OURS = "io.frostlot.";

  private Fault() {}

  static String message(Throwable thrown) {
    if (thrown instanceof OutOfMemoryError) {
      return "The memory given to Java is not enough for this. Give it more, for example java"
          + " -Xmx3g -jar frostlot.jar ..., or plan fewer days.";
    }
    return String.join(
        System.lineSeparator(),
        "This is a fault in Frostlot, not in your files.",
        "Please report it with the command you typed, your files if you may share them, and this:",
        "  " + what(thrown),
        "  at " + where(thrown),
        "  "
            + version()
            + ", Java "
            + System.getProperty("java.version")
            + ", "
            + System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch"));
  }

  /** Is it something that the program says it does not do, rather than a fault? */
  static boolean isMissing(Throwable thrown) {
    StackTraceElement[] trace = thrown.getStackTrace();
    return thrown instanceof UnsupportedOperationException
        && trace.length > 0
        && trace[0].getClassName().startsWith(OURS);
  }

  static String missing(Throwable thrown) {
    return "This cannot be planned with yet: " + thrown.getMessage();
  }

  private static String what(Throwable thrown) {
    String message = String.valueOf(thrown.getMessage()).replaceAll("\\s+", " ");
    return thrown.getClass().getName()
        + ": "
        + message.substring(0, Math.min(500, message.length()));
  }

  /** The first place of our own on the way. */
  private static String where(Throwable thrown) {
    return Arrays.stream(thrown.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith(OURS))
        .findFirst()
        .map(
            frame ->
                frame.getClassName() + "." + frame.getMethodName() + ":" + frame.getLineNumber())
        .orElse("an unknown place");
  }

  static String version() {
    String version = Fault.class.getPackage().getImplementationVersion();
    return "Frostlot " + (version == null ? "(built from source)" : version);
  }
}
