package io.frostlot.app;

import io.frostlot.files.PlanFile;
import io.frostlot.files.Problem;
import io.frostlot.files.Reading;
import io.frostlot.files.ScenarioFolder;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.EarlierOrders;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the order plan of a scenario folder. */
public final class MakePlan {
  private final Planner planner;

  public MakePlan(Planner planner) {
    this.planner = planner;
  }

  /**
   * What is asked for.
   *
   * @param profiles folder of supplier profiles, at most one; none: beside the scenario
   * @param since an earlier plan to keep to and compare with, at most one
   */
  public record Request(Path folder, List<Path> profiles, List<Path> since) {
    public Request {
      profiles = List.copyOf(profiles);
      since = List.copyOf(since);
    }
  }

  /** What reading the folder came to. */
  public sealed interface Prepared {}

  /**
   * Something cannot be used.
   *
   * @param problems of all files, at least one
   */
  public record Refused(List<Problem> problems) implements Prepared {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Everything is there to plan with.
   *
   * @param since the earlier plan, at most one
   * @param known what of it can be followed now, at most one
   */
  public record Ready(Inputs inputs, List<Outline> since, List<Plan> known) implements Prepared {
    public Ready {
      since = List.copyOf(since);
      known = List.copyOf(known);
    }

    /** Differences from the earlier plan; empty where none was given. */
    public Optional<Changes> changes(Answer.WithPlan answer, Outcome outcome) {
      Outline after = Outline.of(inputs.digest(), answer.plan(), outcome);
      return since.stream().findFirst().map(before -> Changes.between(before, after));
    }
  }

  /** Reads everything; all problems come together. */
  public Prepared prepare(Request request) {
    Reading reading =
        request.profiles().isEmpty()
            ? ScenarioFolder.read(request.folder())
            : ScenarioFolder.read(request.folder(), request.profiles().get(0));
    List<Problem> problems = new ArrayList<>();
    if (reading instanceof Reading.Refused refused) {
      problems.addAll(refused.problems());
    }
    List<PlanFile> since = new ArrayList<>();
    for (Path path : request.since()) {
      PlanFile.Reading<PlanFile> earlier = PlanFile.read(path);
      if (earlier instanceof PlanFile.Refused<PlanFile> refused) {
        problems.addAll(refused.problems());
      } else {
        since.add(((PlanFile.Read<PlanFile>) earlier).value());
      }
    }
    if (reading instanceof Reading.Accepted accepted) {
      String currency = accepted.scenario().currency().getCurrencyCode();
      since.forEach(earlier -> earlier.otherCurrency(currency).ifPresent(problems::add));
      if (problems.isEmpty()) {
        return ready(accepted, since);
      }
    }
    return new Refused(problems);
  }

  private static Ready ready(Reading.Accepted accepted, List<PlanFile> since) {
    World world = World.of(accepted.scenario());
    List<String> warnings = new ArrayList<>(accepted.warnings());
    List<Plan> known = new ArrayList<>();
    for (PlanFile earlier : since) {
      if (earlier.scenario().equals(accepted.scenario().name())) {
        EarlierOrders orders = EarlierOrders.of(world, earlier.outline());
        world = world.withDueSoon(orders.dueSoon());
        warnings.addAll(orders.leftOut());
        earlier.asFarAsKnown(world).ifPresent(known::add);
      } else {
        warnings.add(
            "The earlier plan is for %s: none of its orders is kept."
                .formatted(earlier.scenario()));
      }
    }
    return new Ready(
        new Inputs(world, accepted.digest(), warnings),
        since.stream().map(PlanFile::outline).toList(),
        known);
  }

  /** The answer, within the limits; begun with the earlier plan where there is one. */
  public Answer plan(Ready ready, Limits limits, Watch watch) {
    World world = ready.inputs().world();
    Answer answer =
        ready.known().isEmpty()
            ? planner.plan(world, limits, watch)
            : planner.planFrom(ready.known(), world, limits, watch);
    boolean sayWhatClashes = answer instanceof Answer.Impossible && !ready.known().isEmpty();
    return sayWhatClashes ? planner.plan(world, limits, watch) : answer;
  }
}
