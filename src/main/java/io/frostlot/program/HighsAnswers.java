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

  static HighsAnswers create() throws IOException {
    return new HighsAnswers(Files.createTempDirectory("frostlot"));
  }

  /** Where HiGHS writes solutions, one after the other. */
  Path solutions() {
    return folder.resolve("solutions");
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

  /**
   * The newest solution written after a place in the file, and where it ends.
   *
   * @param columns of the question
   */
  Optional<Found> newest(long after, int columns) throws IOException {
    if (!Files.exists(solutions()) || Files.size(solutions()) <= after) {
      return Optional.empty();
    }
    byte[] bytes;
    try (RandomAccessFile file = new RandomAccessFile(solutions().toFile(), "r")) {
      file.seek(after);
      bytes = new byte[(int) (file.length() - after)];
      file.readFully(bytes);
    }
    String text = new String(bytes, StandardCharsets.US_ASCII);
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
  }

  void delete() throws IOException {
    clear();
    Files.deleteIfExists(folder.resolve("part"));
    Files.deleteIfExists(folder);
  }
}
