package io.frostlot.program;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A folder in which one process tells another what it found: HiGHS itself writes each better
 * solution to a file, and the last word stands in another.
 *
 * @param folder of this question and the next
 */
record HighsAnswers(Path folder) {
  /**
   * The solver's own file is written by the block of memory: so many columns behind the last push
   * out all that matters.
   */
  static final int COLUMNS_BEHIND = 4096 / "auto_v_000000000 0".length() + 1;

  private static final String SOLUTION = "# Columns ";

  /** A line of HiGHS's log on the way, or of its report: the bound that it has. */
  private static final Pattern BOUND =
      Pattern.compile(
          "^(?: [A-Z]? +\\d+ +\\d+ +\\d+ +[\\d.]+% +| +Dual bound +)(-?[\\d.]+(?:e[+-]\\d+)?)(?: .*)?$");

  private static final int TAIL_BYTES = 8192;

  static HighsAnswers create() throws IOException {
    return new HighsAnswers(Files.createTempDirectory("frostlot"));
  }

  /** Where HiGHS writes solutions, one after the other. */
  Path solutions() {
    return folder.resolve("solutions");
  }

  /** Where HiGHS says how it goes. */
  Path log() {
    return folder.resolve("log");
  }

  private Path last() {
    return folder.resolve("end");
  }

  /** Says the last word, all of it or nothing. */
  void end(Scip.End end) throws IOException {
    Path part = folder.resolve("part");
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(part)))) {
      out.writeBoolean(end.finished());
      out.writeDouble(end.bound());
      out.writeInt(end.point().length);
      for (double value : end.point()) {
        out.writeDouble(value);
      }
    }
    Files.move(part, last(), StandardCopyOption.ATOMIC_MOVE);
  }

  /** The last word; empty until it is said. */
  Optional<Scip.End> end() throws IOException {
    if (!Files.exists(last())) {
      return Optional.empty();
    }
    try (DataInputStream in = new DataInputStream(Files.newInputStream(last()))) {
      boolean finished = in.readBoolean();
      double bound = in.readDouble();
      double[] point = new double[in.readInt()];
      for (int i = 0; i < point.length; i++) {
        point[i] = in.readDouble();
      }
      return Optional.of(new Scip.End(point, bound, finished));
    }
  }

  /** The newest bound that a whole line of the log tells, safe; none: negative infinity. */
  double bound() throws IOException {
    if (!Files.exists(log())) {
      return Double.NEGATIVE_INFINITY;
    }
    long from = Math.max(0, Files.size(log()) - TAIL_BYTES);
    String text = new String(bytes(log(), from), StandardCharsets.US_ASCII);
    return text.substring(0, text.lastIndexOf('\n') + 1)
        .lines()
        .map(BOUND::matcher)
        .filter(Matcher::matches)
        .map(line -> Relaxation.safe(Double.parseDouble(line.group(1))))
        .reduce(Double.NEGATIVE_INFINITY, (before, after) -> after);
  }

  private static byte[] bytes(Path path, long from) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
      file.seek(from);
      byte[] bytes = new byte[(int) (file.length() - from)];
      file.readFully(bytes);
      return bytes;
    }
  }

  /**
   * The newest solution written after a place in the file, and where it ends.
   *
   * @param columns of the question
   */
  Optional<Found> newest(long after, int columns) throws IOException {
    if (!Files.exists(solutions()) || Files.size(solutions()) <= after) {
      return Optional.empty();
    }
    String text = new String(bytes(solutions(), after), StandardCharsets.US_ASCII);
    List<Integer> starts = new ArrayList<>();
    for (int at = text.indexOf(SOLUTION); at >= 0; at = text.indexOf(SOLUTION, at + 1)) {
      starts.add(at);
    }
    for (int i = starts.size() - 1; i >= 0; i--) {
      String[] lines =
          text.substring(text.indexOf('\n', starts.get(i)) + 1).split("\n", columns + 1);
      if (lines.length > columns) {
        double[] point = new double[columns];
        for (int c = 0; c < columns; c++) {
          point[c] = Double.parseDouble(lines[c].substring(lines[c].lastIndexOf(' ') + 1));
        }
        return Optional.of(new Found(point, after + starts.get(i) + SOLUTION.length()));
      }
    }
    return Optional.empty();
  }

  /**
   * A solution.
   *
   * @param end all that comes after this place is newer
   */
  record Found(double[] point, long end) {}

  /** Nothing is told yet. */
  void clear() throws IOException {
    Files.deleteIfExists(solutions());
    Files.deleteIfExists(last());
    Files.deleteIfExists(log());
  }

  void delete() throws IOException {
    clear();
    Files.deleteIfExists(folder.resolve("part"));
    Files.deleteIfExists(folder);
  }
}
