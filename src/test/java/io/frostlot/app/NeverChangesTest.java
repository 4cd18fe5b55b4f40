package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.PlanJson;
import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.report.PlanReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An animal that takes nothing else than what it had, and a shop that sells nothing but mice of 50
 * g: four meals of that are fed and met, since hunger is worse, but it may refuse them. Sizes lie
 * between powers of two grams: 50 g in 32 to 64, 12 g in 8 to 16.
 */
class NeverChangesTest {
  private static final Pattern WHITE = Pattern.compile("\\s+");
  @TempDir private Path folder;

  private World world(String kinds, String lastKind, int lastGrams) throws IOException {
    new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras("", ", \"tailDays\": 0"),
            new OneMouseShop.Keeping(60, 10))
        .write(folder);
    Files.writeString(
        folder.resolve("animals.csv"),
        """
        name,mass_g,weighed,weekdays,meal_g,largest_piece_g,kinds,late_days,changes,last_kind,last_piece_g
        Ash,500,2031-01-01,wed,50,60,%s,0,never,%s,%d
        """
            .formatted(kinds, lastKind, lastGrams));
    return World.of(((Reading.Accepted) ScenarioFolder.read(folder)).scenario());
  }

  /** The letter on one line, and the JSON. */
  private static List<String> told(World world) {
    Inputs inputs = new Inputs(world, HandmadeRoom.DIGEST, List.of());
    Answer.WithPlan answer =
        (Answer.WithPlan) new EnginePlanner().plan(world, Limits.ofSeconds(600), Watch.NONE);
    assertThat(answer.plan().standing().unmet()).isZero();
    Outcome outcome = Outcome.of(world, answer.plan().plan());
    String letter = new PlanReport(inputs, answer, outcome, List.of()).text(100);
    return List.of(WHITE.matcher(letter).replaceAll(" "), PlanJson.text(inputs, answer));
  }

  @Test
  void another_kind_is_fed_and_named() throws IOException {
    String said =
        "Ash keeps to chick of 32 to 64 g (changes: never), and at 4 of 4 meals is to get mouse of"
            + " 32 to 64 g: nothing that it keeps to would do. If it refuses that, it is a case for"
            + " a vet who knows reptiles.";
    assertThat(told(world("mouse chick", "chick", 40)))
        .allSatisfy(it -> assertThat(it).contains(said));
  }

  @Test
  void another_size_is_fed_and_named() throws IOException {
    assertThat(told(world("mouse", "mouse", 12)))
        .allSatisfy(
            it ->
                assertThat(it)
                    .contains(
                        "Ash keeps to mouse of 8 to 16 g (changes: never), and at 4 of 4 meals is"
                            + " to get mouse of 32 to 64 g"));
  }

  @Test
  void nothing_is_said_of_what_it_keeps_to() throws IOException {
    assertThat(told(world("mouse", "mouse", 40)))
        .allSatisfy(it -> assertThat(it).doesNotContain("changes: never"));
  }
}
