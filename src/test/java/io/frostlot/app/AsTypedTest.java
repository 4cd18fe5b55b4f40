package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.oracle.Exhaustive;
import io.frostlot.plan.Answer;
import io.frostlot.plan.OtherPrey;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.SizeBand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * From files to the plan: events, feeding weekdays, days without feeding and without receiving, an
 * animal that never changes, and freezers beside food with limits by date, as random keepers type
 * them; the plan of what was read is held to trying everything in what was meant. {@code
 * -Dfrostlot.worlds=500} asks for more of them.
 */
class AsTypedTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 25);
  @TempDir private Path folder;

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_is_read_and_planned_is_the_best_of_what_was_meant(long seed) throws IOException {
    TypedKeeper keeper = TypedKeeper.of(new Random(seed));
    write(keeper);
    Reading reading = ScenarioFolder.read(folder);
    assertThat(reading).as("%s", reading).isInstanceOf(Reading.Accepted.class);
    Scenario read = ((Reading.Accepted) reading).scenario();
    World world = World.of(read);
    Exhaustive.Found best = Exhaustive.best(World.of(keeper.means(read))).orElseThrow();

    Answer answer = Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);

    assertThat(answer).isInstanceOf(Answer.Proven.class);
    Answer.Judged plan = ((Answer.Proven) answer).plan();
    assertThat(plan.standing()).as("%s", keeper).isEqualTo(best.standing());
    assertThat(plan.plan().lots())
        .allSatisfy(lot -> assertThat(isOpen(keeper, lot.freezer())).isTrue());
    assertSaysWhatElseIsFed(keeper, world, plan.plan());
  }

  private static boolean isOpen(TypedKeeper keeper, String freezer) {
    return keeper.freezers().stream()
        .filter(it -> it.name().equals(freezer))
        .anyMatch(it -> it.inUse() && (keeper.sealed() || !it.food()));
  }

  /** Of Ash alone, and only where something else is fed; sizes lie between powers of two grams. */
  private static void assertSaysWhatElseIsFed(TypedKeeper keeper, World world, Plan plan) {
    List<SizeBand> given =
        plan.feedings().stream()
            .filter(feeding -> feeding.mealId().startsWith("Ash"))
            .map(feeding -> feeding.option().band())
            .toList();
    int grams = keeper.habits().lastGrams();
    int power = grams == 0 ? 0 : 31 - Integer.numberOfLeadingZeros(grams);
    long others = given.stream().filter(band -> band.doubling() != power).count();
    assertThat(OtherPrey.of(world, plan))
        .extracting(OtherPrey::animal, OtherPrey::meals, OtherPrey::met)
        .containsExactlyElementsOf(
            grams == 0 || others == 0
                ? List.of()
                : List.of(tuple("Ash", (int) others, given.size())));
  }

  private void write(TypedKeeper keeper) throws IOException {
    put("scenario.json", keeper.scenarioJson());
    put("animals.csv", keeper.animalsCsv());
    put("events.csv", keeper.eventsCsv());
    put("freezers.csv", keeper.freezersCsv());
    put("freezer-limits.csv", keeper.limitsCsv());
    put(
        "supplier-profiles/shop/profile.json",
        """
        {"name": "Shop (invented)", "currency": "EUR", "priceSheetDate": "2031-01-01",
         "delivery": {"by": "shop", "openWeekdays": ["mon", "thu"]}}
        """);
    put(
        "supplier-profiles/shop/prices.csv",
        """
        item,kind,least_g,mean_g,most_g,pack_count,price,litres_per_piece
        Small,mouse,11,12,13,1,0.80,0.5
        Big,mouse,22,24,26,1,1.50,1
        Big,mouse,22,24,26,2,2.60,1
        """);
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
