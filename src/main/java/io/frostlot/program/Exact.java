package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/** The program of a world as it is, strengthened; its whole points become plans. */
final class Exact implements Written {
  private final World part;
  private final Judging judging;
  private final Consumer<Answer.Judged> found;
  private final OptionalInt rounds;
  private final Attempt attempt;

  /**
   * Of the whole world, or of a part of its deliveries.
   *
   * @param judging plans, of the whole world
   * @param found told of plans
   * @param rounds of work, as in {@link Limits}
   */
  Exact(World part, Judging judging, Consumer<Answer.Judged> found, OptionalInt rounds) {
    this.part = part;
    this.judging = judging;
    this.found = found;
    this.rounds = rounds;
    attempt = new Attempt(part, judging);
    new CoverRows(attempt.program()).add();
    OrderRoom.add(part, attempt.program());
  }

  /** Nobody is told of plans. */
  static Exact of(World world) {
    return new Exact(world, new Judging(world, new Apart()), plan -> {}, OptionalInt.empty());
  }

  Attempt attempt() {
    return attempt;
  }

  @Override
  public Program program() {
    return attempt.program();
  }

  @Override
  public Exact without(Set<Slot> closed) {
    List<Slot> left = part.slots().stream().filter(slot -> !closed.contains(slot)).toList();
    return new Exact(part.withSlots(left), judging, found, rounds);
  }

  @Override
  public Optional<Written> finer() {
    return Optional.empty();
  }

  @Override
  public void whole(double[] point) {
    attempt.finish(point, rounds).ifPresent(found);
  }
}
