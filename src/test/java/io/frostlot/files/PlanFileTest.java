package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan read back from its file, and what is said where the file has none. */
class PlanFileTest {
  private final World world = HandmadeRoom.world();
  private final Inputs inputs = HandmadeRoom.inputs(world);
  private final Answer found =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95.123456));

  @TempDir Path folder;

  static PlanFile.Reading<PlanFile> read(Path folder, String text) {
    Path file = folder.resolve("plan.json");
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return PlanFile.read(file);
  }

  static <T> T value(PlanFile.Reading<T> reading) {
    if (reading instanceof PlanFile.Refused<T> refused) {
      throw new AssertionError(refused.problems().toString());
    }
    return ((PlanFile.Read<T>) reading).value();
  }

  static List<String> messages(PlanFile.Reading<?> reading) {
    return reading instanceof PlanFile.Refused<?> refused
        ? refused.problems().stream().map(Problem::toString).toList()
        : List.of();
  }

  @Test
  void a_plan_read_back_is_the_same_plan() {
    PlanFile file = value(read(folder, PlanJson.text(inputs, found)));
    Plan plan = HandmadePlan.plan(world);

    assertThat(value(file.plan(world))).isEqualTo(plan);
    assertThat(file.digest()).isEqualTo(HandmadeRoom.DIGEST);
    assertThat(file.outline())
        .isEqualTo(
            Outline.of(HandmadeRoom.DIGEST, HandmadePlan.judged(world), Outcome.of(world, plan)));
  }

  @Test
  void an_answer_without_a_plan_cannot_be_compared_with() {
    assertThat(messages(read(folder, PlanJson.text(inputs, new Answer.NothingFound()))))
        .singleElement()
        .asString()
        .startsWith("plan.json line 7, column ")
        .endsWith("(status): found \"none\", expected an answer with a plan.");
  }

  @Test
  void names_that_the_world_does_not_have_are_refused_together() {
    String text =
        PlanJson.text(inputs, found)
            .replace("\"supplier\": \"corner\"", "\"supplier\": \"comer\"")
            .replace("\"freezer\": \"Kitchen\"", "\"freezer\": \"Kitchn\"")
            .replace("\"meal\": \"Bark 2031-01-16\"", "\"meal\": \"Bark 2031-01-15\"");
    assertThat(messages(value(read(folder, text)).plan(world)))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found \"comer\", expected a supplier of the scenario. Maybe corner was"
                            + " meant."))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found \"Kitchn\", expected a freezer of the scenario. Maybe Kitchen was"
                            + " meant."))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("found \"Bark 2031-01-15\", expected a meal of the scenario."));
  }

  @Test
  void what_is_no_plan_is_refused_with_its_place() {
    String text =
        PlanJson.text(inputs, found)
            .replace("\"total\": \"95.40\"", "\"total\": 95.40")
            .replace(
                "\"orderBy\": \"2031-02-10\",\n      \"ships\"",
                "\"orderBy\": \"2031-02-30\",\n      \"ships\"")
            .replace("\"status\"", "\"stat\"");
    assertThat(messages(read(folder, text)))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("(orders[0].total): found 95.40, expected a decimal in quotes"))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains("(orders[1].orderBy): found \"2031-02-30\", expected a date"))
        .anySatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "found a field \"stat\", expected only known fields. Maybe status was"
                            + " meant."))
        .anySatisfy(it -> assertThat(it).contains("no field \"status\""));
    assertThat(messages(read(folder, "{}"))).isNotEmpty();
    assertThat(messages(read(folder, "[1]"))).isNotEmpty();
    assertThat(messages(PlanFile.read(folder.resolve("nowhere.json"))))
        .containsExactly(
            "nowhere.json: found no such file, expected a file. Maybe its name is misspelt.");
  }

  @Test
  void a_plan_cut_short_anywhere_is_refused() {
    String text = PlanJson.text(inputs, found);
    for (int end = 0; end < text.length() - 2; end += 97) {
      assertThat(messages(read(folder, text.substring(0, end)))).as("cut at " + end).isNotEmpty();
    }
  }
}
