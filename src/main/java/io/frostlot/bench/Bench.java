package io.frostlot.bench;

import io.frostlot.plan.Answer;
import io.frostlot.program.Limits;
import io.frostlot.program.ProgramSize;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Measures methods on rooms in one process: room by room, on each every method in turn. Solver
 * threads that a method leaves behind are waited for before the next begins, but no longer than the
 * method had for the room.
 */
public final class Bench {
  private final List<Method> methods;
  private final BooleanSupplier stop;

  /**
   * A bench.
   *
   * @param stop ends everything as soon as may be, once it says yes
   */
  public Bench(List<Method> methods, BooleanSupplier stop) {
    this.methods = List.copyOf(methods);
    this.stop = stop;
  }

  /**
   * The first method once, to the first plan: seconds from the start of the process, the room drawn
   * or read in them; empty where there is no plan in its time. It warms the process up.
   */
  public OptionalDouble cold(Subject subject) {
    Stopwatch[] watch = new Stopwatch[1];
    watch[0] = new Stopwatch(() -> stop.getAsBoolean() || !watch[0].reached().seconds().isEmpty());
    Method first = methods.get(0);
    LeftBehind left = LeftBehind.now();
    Answer answer =
        first
            .planner()
            .plan(subject.world(), new Limits(first.most(), OptionalInt.empty()), watch[0]);
    long born = ManagementFactory.getRuntimeMXBean().getStartTime();
    double seconds = (System.currentTimeMillis() - born) / 1e3;
    left.settle(first.most());
    return answer instanceof Answer.WithPlan ? OptionalDouble.of(seconds) : OptionalDouble.empty();
  }

  /**
   * Measures.
   *
   * @param news told of each measurement when it is done
   */
  public List<Measurement> measure(List<Subject> subjects, Consumer<Measurement> news) {
    List<Measurement> all = new ArrayList<>();
    for (Subject subject : subjects) {
      for (Method method : methods) {
        if (!stop.getAsBoolean()) {
          Measurement measured = measure(subject, method);
          all.add(measured);
          news.accept(measured);
        }
      }
    }
    return all;
  }

  private Measurement measure(Subject subject, Method method) {
    ProgramSize size = method.size().apply(subject.world());
    PeakMemory.reset();
    LeftBehind left = LeftBehind.now();
    Stopwatch watch = new Stopwatch(stop);
    Answer answer =
        method
            .planner()
            .plan(subject.world(), new Limits(method.most(), OptionalInt.empty()), watch);
    if (answer instanceof Answer.WithPlan found) {
      watch.found(found);
    }
    Measurement measured =
        new Measurement(subject, method, answer, watch.reached(), PeakMemory.megabytes(), size);
    left.settle(method.most());
    return measured;
  }
}
