package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Litres;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Laws of the whole comparison on random tiny worlds; {@code -Dfrostlot.worlds=500} asks for more.
 */
class WhatIfLawsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 25);

  private static Questions questions() {
    return new Questions(new EnginePlanner(), Limits.ofSeconds(600), Watch.NONE);
  }

  private static World with(World world, Deal deal) {
    return World.of(Deal.in(world.scenario(), List.of(deal))).withSlots(world.slots());
  }

  private static Deal halfPrice(Supplier supplier) {
    return new Deal.OnPacks(
        supplier.id(),
        new Sale(
            "half price",
            Period.ALWAYS,
            DateBasis.ORDER,
            Set.of(),
            new Sale.PercentOff(Percent.of("50")),
            new Sale.Limits(2, 3),
            false));
  }

  /** Whichever is asked first. */
  @Test
  void a_sale_that_may_be_declined_is_never_worth_less_than_nothing() {
    int worth = 0;
    for (long seed = 0; seed < WORLDS; seed++) {
      World base = TinyWorlds.of(seed);
      for (Supplier supplier : base.scenario().suppliers()) {
        World sale = with(base, halfPrice(supplier));
        Questions questions = questions();
        boolean first = seed % 2 == 0;
        Optional<Solved> one = questions.ask(first ? base : sale, 1);
        Optional<Solved> two = questions.ask(first ? sale : base, 1);
        Optional<Solved> without = first ? one : two;
        Optional<Solved> given = first ? two : one;
        String name = "seed " + seed + " " + base.scenario().name();
        if (without.isPresent()) {
          assertThat(given).as(name).isPresent();
          Standing before = without.get().standing();
          assertThat(given.get().standing()).as(name).isLessThanOrEqualTo(before);
          Difference difference = Difference.between(without.get(), given.get());
          assertThat(difference.betterMeals() || difference.saves().most().orElse(0) >= -0.01)
              .as(name)
              .isTrue();
          worth += difference.found().isZero() ? 0 : 1;
        }
      }
    }
    assertThat(worth).as("sales that save something").isPositive();
  }

  private static World sized(World world, double part) {
    Scenario.Larder larder = world.scenario().larder();
    List<Freezer> freezers =
        larder.freezers().stream()
            .map(
                it -> it.withUsable(new Litres((long) Math.ceil(it.usable().microlitres() * part))))
            .toList();
    return world.withScenario(world.scenario().withLarder(larder.withFreezers(freezers)));
  }

  @Test
  void more_room_in_the_freezers_is_never_worse() {
    int better = 0;
    for (long seed = 0; seed < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      Questions questions = questions();
      Optional<Solved> less = Optional.empty();
      for (double part : new double[] {0.5, 1, 1.5, 100}) {
        Optional<Solved> more = questions.ask(sized(world, part), 1);
        if (less.isPresent()) {
          String name = "seed " + seed + " x " + part + " " + world.scenario().name();
          assertThat(more).as(name).isPresent();
          assertThat(more.get().standing()).as(name).isLessThanOrEqualTo(less.get().standing());
          better += more.get().standing().equals(less.get().standing()) ? 0 : 1;
        }
        less = more;
      }
    }
    assertThat(better).as("worlds in which room matters").isPositive();
  }

  /** Asked with all first or last. */
  @Test
  void leaving_a_supplier_out_is_never_better() {
    int worse = 0;
    for (long seed = 0; seed < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      for (Supplier supplier : world.scenario().suppliers()) {
        World without =
            world.withSlots(
                world.slots().stream().filter(s -> !s.supplier().equals(supplier.id())).toList());
        Questions questions = questions();
        boolean first = seed % 2 == 0;
        Optional<Solved> one = questions.ask(first ? world : without, 1);
        Optional<Solved> two = questions.ask(first ? without : world, 1);
        Optional<Solved> all = first ? one : two;
        Optional<Solved> part = first ? two : one;
        String name = "seed " + seed + " " + world.scenario().name();
        if (part.isPresent()) {
          assertThat(all).as(name).isPresent();
          assertThat(all.get().standing()).as(name).isLessThanOrEqualTo(part.get().standing());
          worse += all.get().standing().equals(part.get().standing()) ? 0 : 1;
        }
      }
    }
    assertThat(worse).as("suppliers that matter").isPositive();
  }
}
