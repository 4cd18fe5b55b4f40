package io.frostlot.app;

import io.frostlot.plan.Discard;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Slot;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Finds out how full freezers get, what room is worth, and what is lost where one fails. */
public final class SizeFreezers {
  private static final double PRESENT = 0.34;
  private static final double MORE = 0.1;
  private static final double REST = 0.05;

  /** Common practice for a deep freezer that is seldom opened: plan with six months. */
  private static final int DEEP_DAYS = 182;

  private final Questions questions;
  private final World base;
  private final Consumer<FreezerFinding> found;

  /**
   * What is asked for.
   *
   * @param freezer whose room is changed, at most one; none: the largest in use
   * @param more litres of one more deep freezer; zero: none is looked at
   * @param lostOn the day on which freezers fail, at most one; none: each on its fullest
   */
  public record Request(
      List<String> freezer, Litres more, FreezerFinding.Purchase purchase, List<LocalDate> lostOn) {
    public Request {
      freezer = List.copyOf(freezer);
      lostOn = List.copyOf(lostOn);
    }

    private boolean isMore() {
      return more.microlitres() > 0;
    }
  }

  /**
   * A look that has not begun.
   *
   * @param found told each finding as soon as it is known
   */
  public SizeFreezers(Questions questions, World base, Consumer<FreezerFinding> found) {
    this.questions = questions;
    this.base = base;
    this.found = found;
  }

  /** Finds out as much as time allows. */
  public void run(Request request) {
    boolean more = request.isMore();
    FreezerCurve room = new FreezerCurve(questions, base, chosen(request));
    room.prepare();
    Optional<Solved> present = new Present(questions, Solved::plan, this::use).of(base, PRESENT);
    if (present.isEmpty()) {
      return;
    }
    Solved longer = present.get();
    losses(longer, request);
    Optional<FreezerFinding.Curve> curve = room.find(longer, more ? 1 - REST - MORE : 1 - REST);
    curve.ifPresentOrElse(found, () -> notKnown(FreezerFinding.Asked.CURVE));
    Solved best = curve.map(FreezerFinding.Curve::asItIs).orElse(longer);
    curve.ifPresentOrElse(it -> fit(it, best), () -> notKnown(FreezerFinding.Asked.FIT));
    if (more) {
      oneMore(request, best);
    }
  }

  /** Where there is no plan: would there be one with more room in the freezer chosen? */
  public FreezerFinding.RoomInstead roomInstead(Request request) {
    double until = request.isMore() ? 1 - REST - MORE : 1 - REST;
    return new FreezerCurve(questions, base, chosen(request)).instead(PRESENT, until);
  }

  /** Where there is no plan: would there be one with the further freezer, where it is asked for? */
  public List<FreezerFinding.MoreInstead> moreInstead(Request request) {
    if (!request.isMore()) {
      return List.of();
    }
    Freezer more = more(request);
    World with = with(more);
    FreezerFinding.Possible plan =
        questions.ask(with, MORE).isPresent()
            ? FreezerFinding.Possible.YES
            : questions.isSettled(with)
                ? FreezerFinding.Possible.NO
                : FreezerFinding.Possible.NOT_KNOWN;
    return List.of(new FreezerFinding.MoreInstead(more, plan));
  }

  /** What was asked for does not vanish. */
  private void notKnown(FreezerFinding.Asked asked) {
    found.accept(new FreezerFinding.NotKnown(asked));
  }

  private void use(Solved plan) {
    List<FreezerLoad> loads = plan.outcome().freezers();
    found.accept(new FreezerFinding.Use(plan, loads, free(loads)));
  }

  private void losses(Solved plan, Request request) {
    for (FreezerLoad load : plan.outcome().freezers()) {
      LocalDate day = request.lostOn().stream().findFirst().orElse(load.peakDay());
      if (load.on(day).microlitres() > 0) {
        found.accept(new FreezerLosses(plan).of(load, day));
      }
    }
  }

  private Freezer chosen(Request request) {
    List<Freezer> inUse =
        base.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
    return request.freezer().stream()
        .map(base::freezer)
        .findFirst()
        .orElseGet(() -> inUse.stream().max(Comparator.comparing(Freezer::usable)).orElseThrow());
  }

  private List<FreezerFinding.Free> free(List<FreezerLoad> loads) {
    List<FreezerLoad> inUse = loads.stream().filter(load -> load.freezer().inUse()).toList();
    List<LocalDate> days = base.slots().stream().map(Slot::arrivesEarliest).distinct().toList();
    return days.stream()
        .sorted()
        .map(
            day ->
                new FreezerFinding.Free(
                    day,
                    new Litres(
                        inUse.stream().mapToLong(load -> load.free(day).microlitres()).sum()),
                    new Litres(inUse.stream().mapToLong(load -> freeFrom(load, day)).sum())))
        .toList();
  }

  private static long freeFrom(FreezerLoad load, LocalDate day) {
    return load.byDay().tailMap(day).keySet().stream()
        .mapToLong(later -> load.free(later).microlitres())
        .min()
        .orElse(0);
  }

  private void fit(FreezerFinding.Curve curve, Solved best) {
    FreezerFinding.Point unlimited = curve.points().get(curve.points().size() - 1);
    int thrownAway = best.plan().discards().stream().mapToInt(Discard::pieces).sum();
    found.accept(new FreezerFinding.Fit(questions.between(best, unlimited.plan()), thrownAway));
  }

  private static Freezer more(Request request) {
    return new Freezer(
        "one more deep freezer",
        request.more(),
        "deep",
        new Freezer.Life(DEEP_DAYS, Grams.ZERO, DEEP_DAYS),
        true);
  }

  private World with(Freezer more) {
    Scenario.Larder larder = base.scenario().larder();
    List<Freezer> freezers = new ArrayList<>(larder.freezers());
    freezers.add(more);
    return base.withScenario(base.scenario().withLarder(larder.withFreezers(freezers)));
  }

  private void oneMore(Request request, Solved best) {
    Freezer more = more(request);
    World with = with(more);
    questions.looser(with, base);
    LocalDate from = base.scenario().planning().from();
    int days = (int) (base.scenario().planning().to().toEpochDay() - from.toEpochDay()) + 1;
    questions.learn(best.plan());
    questions
        .ask(with, MORE)
        .map(it -> it.orBetter(best))
        .ifPresentOrElse(
            it ->
                found.accept(
                    new FreezerFinding.OneMore(
                        more, questions.between(best, it), request.purchase(), days)),
            () -> notKnown(FreezerFinding.Asked.ONE_MORE));
  }
}
