package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** Against the search that is never paused. */
class InquiryTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 20);

  /** A few milliseconds at a time, now one half, now the other. */
  private static void settle(Inquiry inquiry) {
    while (!inquiry.isSettled()) {
      for (Inquiry.Half half : Inquiry.Half.values()) {
        inquiry.letOn(half, 20);
        while (!inquiry.isAtRest(half) && !inquiry.isSettled()) {
          LockSupport.parkNanos(1_000_000);
        }
      }
    }
  }

  @Test
  void paused_again_and_again_it_comes_to_the_same_answer() {
    List<Answer> plans = new ArrayList<>();
    for (long seed = 0; seed < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      Answer expected = Engine.solve(world, Limits.ofSeconds(600), Watch.NONE);
      try (Inquiry inquiry = new Inquiry(world, OptionalInt.empty())) {
        settle(inquiry);
        String name = "seed " + seed + " " + world.scenario().name();
        if (expected instanceof Answer.WithPlan plan) {
          assertThat(inquiry.answer()).as(name).containsInstanceOf(Answer.Proven.class);
          assertSame(name, world, inquiry.answer().get().plan().standing(), plan.plan().standing());
          plans.add(plan);
        } else {
          assertThat(inquiry.isImpossible()).as(name).isTrue();
          assertThat(inquiry.clash().clash()).as(name).isNotEmpty();
        }
      }
    }
    assertThat(plans).isNotEmpty();
  }

  /** Proven is what is within half a minor unit of the best, in either. */
  private static void assertSame(String name, World world, Standing found, Standing expected) {
    int digits = world.scenario().currency().getDefaultFractionDigits();
    assertThat(found.sameBeforeMoney(expected)).as(name).isTrue();
    assertThat(found.money().toDouble())
        .as(name)
        .isCloseTo(expected.money().toDouble(), within(0.5 * Math.pow(10, -digits)));
  }

  @Test
  void what_is_known_of_a_looser_world_and_a_plan_of_it_that_fits_prove_it_without_a_look() {
    Inquiry looser = firstWithAPlan();
    try (Inquiry same = new Inquiry(looser.world(), OptionalInt.empty())) {
      same.learn(List.of(looser.answer().orElseThrow().plan().plan()));
      assertThat(same.isSettled()).isFalse();
      same.isNoBetterThan(looser);
      assertThat(same.isSettled()).isTrue();
      assertThat(same.answer()).containsInstanceOf(Answer.Proven.class);
    }
  }

  private static Inquiry firstWithAPlan() {
    for (long seed = 0; ; seed++) {
      Inquiry inquiry = new Inquiry(TinyWorlds.of(seed), OptionalInt.empty());
      settle(inquiry);
      inquiry.close();
      if (inquiry.answer().isPresent()) {
        return inquiry;
      }
    }
  }
}
