package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A planner whose plans leave so many meals unmet as a test says, in a room with a chest of 10
 * litres: 9 and 11 of it are tried, and prey that takes 85 and 115 % of its room (11.8 and 8.7
 * litres).
 */
class GuessEndsTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  @TempDir private Path folder;
  private World world;
  private Plan nothing;

  @BeforeEach
  void room() {
    world = new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(60, 10)).world(folder);
    nothing = new Plan(List.of(), List.of(), List.of(), List.of());
  }

  private static double litres(World world) {
    return world.scenario().larder().freezers().get(0).usable().toDouble();
  }

  private Solved shown(int unmet) {
    Answer.WithPlan found =
        (Answer.WithPlan) new EnginePlanner().plan(world, Limits.ofSeconds(60), Watch.NONE);
    return new Solved(world, unmet(found.plan().plan(), unmet, false));
  }

  private static Answer.WithPlan unmet(Plan plan, int unmet, boolean proven) {
    Books books = new Books();
    books.unmet(unmet, true);
    Answer.Judged judged = new Answer.Judged(plan, books);
    return proven
        ? new Answer.Proven(judged, 0)
        : new Answer.BestFound(judged, OptionalDouble.empty());
  }

  /** What was asked of it, and what it was given to begin with. */
  private record Asked(World world, List<Plan> known) {}

  /** Leaves so many meals unmet, and writes down what it is asked. */
  private record Stand(ToIntFunction<World> unmet, boolean proven, Plan plan, List<Asked> asked)
      implements Planner {
    @Override
    public Answer plan(World world, Limits limits, Watch watch) {
      return planFrom(List.of(), world, limits, watch);
    }

    @Override
    public Answer planFrom(List<Plan> known, World world, Limits limits, Watch watch) {
      asked.add(new Asked(world, known));
      return GuessEndsTest.unmet(plan, unmet.applyAsInt(world), proven);
    }
  }

  private Map<Guess.Kind, Guesses.Tried> tried(
      Solved shown, boolean proven, ToIntFunction<World> unmet) {
    Map<Guess.Kind, Guesses.Tried> byKind = new TreeMap<>();
    new FindOut(new Stand(unmet, proven, nothing, new ArrayList<>()))
        .of(shown, LIMITS, Watch.NONE)
        .orElseThrow()
        .tried()
        .forEach(it -> byKind.put(it.guess().kind(), it));
    return byKind;
  }

  /** The plan shown meets all; orders nothing is what is found with less room. */
  @Test
  void what_is_worse_than_the_plan_shown_and_not_proven_is_no_change() {
    Guesses.Tried litres =
        tried(shown(0), false, it -> litres(it) < 10 ? 2 : 0).get(Guess.Kind.FREEZER_LITRES);
    assertThat(litres.low().sure()).isEqualTo(Guesses.Sure.UNKNOWN);
    assertThat(litres.low().moved().isZero()).isTrue();
    assertThat(litres.low().changes()).isEmpty();
    assertThat(litres.high().sure()).isEqualTo(Guesses.Sure.PERHAPS);
    assertThat(litres.high().moved().isZero()).isFalse();
  }

  @Test
  void what_is_worse_and_proven_is_a_change() {
    Guesses.Tried litres =
        tried(shown(0), true, it -> litres(it) < 10 ? 2 : 0).get(Guess.Kind.FREEZER_LITRES);
    assertThat(litres.low().sure()).isEqualTo(Guesses.Sure.PROVEN);
    assertThat(litres.low().moved().isZero()).isFalse();
  }

  /** With 9 litres all are met, so with 11 and 11.8 they can be; with 8.7 it is not known. */
  @Test
  void what_can_be_had_in_less_room_shows_that_more_is_possible() {
    Map<Guess.Kind, Guesses.Tried> tried = tried(shown(2), false, it -> litres(it) == 9 ? 0 : 2);
    assertThat(tried.get(Guess.Kind.FREEZER_LITRES).low().sure()).isEqualTo(Guesses.Sure.PERHAPS);
    assertThat(tried.get(Guess.Kind.FREEZER_LITRES).high().sure()).isEqualTo(Guesses.Sure.UNKNOWN);
    assertThat(tried.get(Guess.Kind.PREY_LITRES).low().sure()).isEqualTo(Guesses.Sure.UNKNOWN);
    assertThat(tried.get(Guess.Kind.PREY_LITRES).high().sure()).isEqualTo(Guesses.Sure.PERHAPS);
  }

  /** Whichever guess is tried first, both ends of the other begin with its plans. */
  @Test
  void less_room_is_tried_first_and_its_plan_is_given_to_more_room() {
    Solved shown = shown(0);
    List<Asked> asked = new ArrayList<>();
    new FindOut(new Stand(it -> 0, false, nothing, asked)).of(shown, LIMITS, Watch.NONE);
    List<Asked> rooms = asked.stream().filter(it -> litres(it.world()) != 10).toList();
    assertThat(rooms).hasSize(4);
    assertThat(litres(rooms.get(0).world())).isLessThan(litres(rooms.get(1).world()));
    assertThat(litres(rooms.get(2).world())).isLessThan(litres(rooms.get(3).world()));
    assertThat(rooms.get(0).known()).containsExactly(shown.plan());
    assertThat(rooms.get(1).known()).containsExactly(shown.plan(), nothing);
    assertThat(rooms.get(2).known()).contains(shown.plan(), nothing);
  }

  @Test
  void the_plan_shown_orders_something() {
    assertThat(shown(0).plan().orders()).extracting(Order::pieces).isNotEmpty();
  }
}
