package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThatCode;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a plan in JSON, reading it ends in a plan or in problems. */
class MutatedPlansTest {
  private static final int TRIES = 1500;
  private static final List<String> BITS =
      List.of(
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "0",
          "-1",
          "1e9",
          "null",
          "true",
          "9999999999999",
          "2031-02-30",
          "\\u0000",
          "\n",
          "é",
          "\"item\"",
          "Hopper",
          "A1");
  private final World world = HandmadeRoom.world();

  @TempDir Path folder;

  private String mutated(String text, Random random) {
    StringBuilder mutated = new StringBuilder(text);
    for (int i = random.nextInt(3); i >= 0; i--) {
      int from = random.nextInt(mutated.length());
      int to = Math.min(mutated.length(), from + random.nextInt(12));
      mutated.replace(from, to, BITS.get(random.nextInt(BITS.size())));
    }
    return mutated.toString();
  }

  private void read(Path file) {
    PlanFile.Reading<PlanFile> reading = PlanFile.read(file);
    if (reading instanceof PlanFile.Read<PlanFile> read) {
      read.value().outline();
      if (read.value().plan(world) instanceof PlanFile.Refused<?> refused
          && refused.problems().isEmpty()) {
        throw new AssertionError("refused without a problem");
      }
    } else if (((PlanFile.Refused<PlanFile>) reading).problems().isEmpty()) {
      throw new AssertionError("refused without a problem");
    }
  }

  @Test
  void only_problems_or_a_plan_come_out() throws IOException {
    String text =
        PlanJson.text(
            HandmadeRoom.inputs(world),
            new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95)));
    long seed = System.nanoTime();
    Random random = new Random(seed);
    for (int i = 0; i < TRIES; i++) {
      String mutated = mutated(text, random);
      Path file = Files.writeString(folder.resolve("plan.json"), mutated);
      assertThatCode(() -> read(file)).as("seed %d:%n%s", seed, mutated).doesNotThrowAnyException();
    }
  }
}
