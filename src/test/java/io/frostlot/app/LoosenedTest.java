package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class LoosenedTest {
  @Test
  void leaving_the_margins_out_leaves_everything_else_as_it_is() {
    World room = HandmadeRoom.world();
    Policy strict =
        room.scenario()
            .policy()
            .withSafety(new Policy.Safety(2, Percent.of("5")))
            .withAdequacy(new Policy.Adequacy(true, Percent.of("97"), Percent.of("105")));
    World world = room.withScenario(room.scenario().withPolicy(strict));

    assertThat(Loosened.of(world))
        .filteredOn(it -> it.says().equals("without safety margins"))
        .singleElement()
        .extracting(it -> it.world().scenario().policy())
        .isEqualTo(strict.withSafety(Policy.Safety.NONE));
  }

  @Test
  void wishes_for_animals_are_left_out_one_kind_at_a_time() {
    World room = HandmadeRoom.world();
    Animal first = room.scenario().collection().animals().get(0);
    Animal.Programme own = first.programme();
    Animal.Leeway limited =
        new Animal.Leeway(
            own.days().early(),
            own.days().late(),
            List.of(new Lateness(Lateness.Counted.MEALS, 1)));
    Plate keep = new Plate(new TreeMap<>(), new Plate.Keep(Set.of()));
    Animal wishing =
        first
            .withDiet(first.diet().withPlate(keep))
            .withProgramme(
                new Animal.Programme(own.schedule(), own.size(), own.importance(), limited));
    World world = room.withScenario(room.scenario().withAnimals(List.of(wishing)));

    assertThat(Loosened.of(world))
        .filteredOn(it -> !it.world().scenario().collection().animals().contains(wishing))
        .extracting(Loosened::says, it -> it.world().scenario().collection().animals().get(0))
        .containsExactly(
            tuple(
                "with anything on the plate that an animal accepts",
                wishing.withDiet(first.diet())),
            tuple("without limits on late meals", wishing.withProgramme(own)));
    assertThat(Loosened.of(room))
        .extracting(Loosened::says)
        .doesNotContain("without limits on late meals");
  }
}
