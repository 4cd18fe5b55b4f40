package io.frostlot.cli;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Remembers the best plan so far and, where somebody looks on, says how it goes. */
final class Progress implements Watch {
  private static final long REDRAWN_NANOS = 500_000_000;
  private final World world;
  private final BooleanSupplier stop;
  private final Status status;
  private final Clock clock = new Clock();
  private volatile Optional<Answer.WithPlan> best = Optional.empty();
  private volatile long drawn = System.nanoTime();

  Progress(World world, BooleanSupplier stop, Status status) {
    this.world = world;
    this.stop = stop;
    this.status = status;
  }

  /** Where the line goes. */
  interface Status {
    /** Nobody looks. */
    Status NONE = (line, news) -> {};

    /**
     * Shows a line.
     *
     * @param news more than the clock has changed
     */
    void show(String line, boolean news);
  }

  /** Asked often by the planner, and so the clock by which the line is drawn again. */
  @Override
  public boolean stop() {
    if (System.nanoTime() - drawn > REDRAWN_NANOS) {
      show(false);
    }
    return stop.getAsBoolean();
  }

  @Override
  public void found(Answer.WithPlan found) {
    best = Optional.of(found);
    show(true);
  }

  Answer bestOrNothing() {
    return best.<Answer>map(found -> Engine.handedOut(world, found))
        .orElseGet(Answer.NothingFound::new);
  }

  private synchronized void show(boolean news) {
    drawn = System.nanoTime();
    status.show(line(), news);
  }

  /** Such as " 4.2 s best 612.30 bound 604.10 gap 8.20 EUR (1.3 %)". */
  private String line() {
    return clock.time() + best.map(this::standing).orElse("  no plan yet");
  }

  private String standing(Answer.WithPlan found) {
    Standing standing = found.plan().standing();
    int unmet = standing.unmet();
    StringBuilder line = new StringBuilder("  best ").append(money(standing.money()));
    found.bound().ifPresent(bound -> line.append("  bound ").append(money(bound)));
    Optional<Gap> gap = Gap.of(found);
    gap.ifPresent(it -> line.append("  gap ").append(money(it.amount())));
    line.append(' ').append(world.scenario().currency().getCurrencyCode());
    gap.ifPresent(it -> line.append(String.format(Locale.ROOT, " (%.1f %%)", it.percent())));
    return line.append(unmet == 0 ? "" : "  " + unmet + " meals unmet").toString();
  }

  private String money(double amount) {
    return money(new Money(BigDecimal.valueOf(amount).setScale(4, RoundingMode.HALF_UP)));
  }

  private String money(Money amount) {
    return amount.rounded(world.decimals()).toText(world.decimals());
  }
}
