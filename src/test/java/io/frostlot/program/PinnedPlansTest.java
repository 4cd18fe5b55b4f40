package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The two faces of the rules on random plans, many of them with a mistake: a program held to the
 * plan has a solution exactly when no rule objects to the plan, and it comes to the same. {@code
 * -Dfrostlot.pinned=10000} asks for more.
 */
class PinnedPlansTest {
  private static final int PLANS = Integer.getInteger("frostlot.pinned", 400);
  private static final int PLANS_OF_A_WORLD = 8;
  private static final int MOST_STEPS = 3;

  private int compared;
  private int refused;
  private int unsaid;

  @Test
  void a_program_held_to_a_plan_says_of_it_what_the_rules_say() {
    for (long seed = 0; compared < PLANS; seed++) {
      Random random = new Random(seed);
      World world = TinyWorlds.of(seed);
      for (int i = 0; i < PLANS_OF_A_WORLD && compared < PLANS; i++) {
        Optional<Plan> begun = begin(world, random);
        if (begun.isPresent()) {
          Plan plan = begun.get();
          Mutations mutations = new Mutations(world, random);
          for (int step = random.nextInt(MOST_STEPS + 1); step > 0; step--) {
            plan = mutations.mutate(plan);
          }
          compare(world, plan, "plan " + i + " of " + world.scenario().name());
        }
      }
    }
    assertThat(refused).as("plans with a mistake").isBetween(PLANS / 10, PLANS * 9 / 10);
    assertThat(unsaid).as("plans that the program has no words for").isLessThan(PLANS / 2);
    System.out.printf(
        "%d plans compared, %d of them refused; %d others not said%n", compared, refused, unsaid);
  }

  /** A plan that is good for a random purpose. */
  private static Optional<Plan> begin(World world, Random random) {
    Program program = Rules.program(world);
    Linear purpose = new Linear();
    for (int i = 0; i < program.model().columns().size(); i++) {
      if (Double.isFinite(program.model().columns().get(i).most())) {
        purpose.plus(random.nextInt(11) - 5, new Var(i));
      }
    }
    for (OrderDecisions order : program.decisions().orders().values()) {
      order.packs().values().forEach(pack -> purpose.plus(3, pack.count()));
    }
    Scip.End end =
        Scip.minimise(
            program.model(), Scip.Task.of(purpose, List.of(), false, Scip.Budget.ofMillis(20_000)));
    if (!end.found() || !new WholePacks(world).withinMostBoxes(program, end.point())) {
      return Optional.empty();
    }
    boolean throwAway = random.nextBoolean();
    return Optional.of(OldestFirst.of(new PlanBuilder(program, end.point()).build(throwAway)));
  }

  private void compare(World world, Plan plan, String name) {
    Program program = Rules.program(world, Formulation.PLAIN);
    Pins pins = Pins.of(program, plan);
    if (!pins.isSaid()) {
      unsaid++;
      return;
    }
    Answer.Judged judged = Rules.judge(world, plan);
    List<Books.Breach> breaches = judged.books().breaches();
    Optional<Map<Level, Double>> levels =
        pins.isPossible() ? LevelByLevel.held(world, program, pins.rows()) : Optional.empty();
    compared++;
    refused += breaches.isEmpty() ? 0 : 1;
    String about = name + "\n" + breaches + "\n" + plan;
    assertThat(levels.isPresent()).as(about).isEqualTo(breaches.isEmpty());
    levels
        .orElse(Map.of())
        .forEach(
            (level, value) ->
                assertThat(value)
                    .as(level + " of " + about)
                    .isCloseTo(Best.level(judged.standing(), level), offset(5e-4)));
  }
}
