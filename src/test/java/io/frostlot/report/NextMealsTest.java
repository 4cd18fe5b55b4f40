package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.World;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a letter says of the meals that are next. */
class NextMealsTest {
  private final World world = HandmadeRoom.world();
  private final Answer.Judged judged = HandmadePlan.judged(world);

  private List<String> section() {
    return new PlanReport(
            new Inputs(world, HandmadeRoom.DIGEST, List.of()),
            new Answer.BestFound(judged, OptionalDouble.empty()),
            Outcome.of(world, judged.plan()),
            List.of())
        .text(100)
        .lines()
        .map(line -> line.replace('\u00a0', ' '))
        .dropWhile(line -> !line.startsWith("MEALS OF THE NEXT 7 DAYS"))
        .takeWhile(line -> !line.startsWith("EACH ANIMAL"))
        .toList();
  }

  @Test
  void every_feeding_of_seven_days_has_a_line_and_no_other() {
    LocalDate first = world.scenario().planning().from();
    List<Feeding> next =
        judged.plan().feedings().stream()
            .filter(feeding -> feeding.day().isBefore(first.plusDays(7)))
            .toList();
    assertThat(next).isNotEmpty();
    List<String> lines = section().stream().filter(line -> line.contains(" x  ")).toList();
    assertThat(lines).hasSameSizeAs(next);
    for (Feeding feeding : next) {
      assertThat(lines)
          .anyMatch(
              line -> line.contains(feeding.pieces() + " x  " + feeding.option().item().name()));
    }
  }

  @Test
  void what_is_thawed_is_not_frozen_again_and_no_animal_is_forced() {
    assertThat(String.join(" ", section()).replaceAll("\\s+", " "))
        .contains("freeze none of it again", "not fed for the plan's sake");
  }
}
