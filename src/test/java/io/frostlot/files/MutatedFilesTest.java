package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.World;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever bytes stand in the files, only problems come out, or a scenario that can be planned. */
class MutatedFilesTest {
  private static final List<String> TOKENS =
      List.of(
          "",
          "0",
          "-1",
          "1e999999999",
          "NaN",
          "0.0000001",
          "999999999999",
          "99999999999999999999",
          "\"",
          "\"\"",
          "'",
          ",",
          ";",
          "\t",
          "\r",
          "\n",
          "{",
          "}",
          "[",
          "]",
          ":",
          "null",
          "true",
          "2031-02-30",
          "2999-12-31",
          "1900-01-01",
          "2031-01-05/2031-01-01",
          "/",
          "\0",
          "\u202e",
          "\uFEFF",
          "mouse",
          "x\u0000y",
          "\\ud800",
          "stock",
          "hillside",
          "tail");
  private static Path folder;
  private static List<Path> files;

  @BeforeContainer
  static void copy() throws IOException {
    folder = Files.createTempDirectory("mutated");
    Samples.goodCopy(folder);
    files = Samples.files(folder);
  }

  @AfterContainer
  static void delete() throws IOException {
    for (Path file : files) {
      Files.delete(file);
    }
  }

  @Property(tries = 600)
  void only_problems_or_a_plannable_scenario_come_out(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    Path file = files.get(random.nextInt(files.size()));
    byte[] bytes = Files.readAllBytes(file);
    byte[] mutated = bytes;
    for (int i = random.nextInt(3); i >= 0; i--) {
      mutated = random.nextBoolean() ? spliced(mutated, random) : worded(mutated, random);
    }
    Files.write(file, mutated);
    try {
      Reading reading = ScenarioFolder.read(folder);
      if (reading instanceof Reading.Accepted accepted) {
        assertThat(World.of(accepted.scenario()).slots()).isNotNull();
      } else {
        assertThat(Samples.messages(reading))
            .isNotEmpty()
            .allMatch(message -> message.length() < 1500 && message.lines().count() == 1);
      }
    } finally {
      Files.write(file, bytes);
    }
  }

  /** Some bytes gone, some noise, a token or a copy of another part in their place. */
  private static byte[] spliced(byte[] bytes, Random random) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + random.nextInt(12));
    byte[] noise = new byte[random.nextInt(4)];
    random.nextBytes(noise);
    int copied = random.nextInt(bytes.length + 1);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    switch (random.nextInt(3)) {
      case 0 -> out.writeBytes(noise);
      case 1 -> out.writeBytes(token(random));
      default -> out.write(bytes, copied, Math.min(bytes.length - copied, random.nextInt(80)));
    }
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }

  /** A word or number replaced by a token, so that the file keeps its form. */
  private static byte[] worded(byte[] bytes, Random random) {
    int from = random.nextInt(bytes.length + 1);
    while (from > 0 && isWord(bytes[from - 1])) {
      from--;
    }
    int to = from;
    while (to < bytes.length && isWord(bytes[to])) {
      to++;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    out.writeBytes(token(random));
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }

  private static boolean isWord(byte b) {
    return Character.isLetterOrDigit(b) || b == '-' || b == '.' || b == '/';
  }

  private static byte[] token(Random random) {
    return TOKENS.get(random.nextInt(TOKENS.size())).getBytes(StandardCharsets.UTF_8);
  }
}
