package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * The other side of {@link Highs}: reads questions from standard input, solves one after the other
 * and ends when the input does, even in the middle of a question.
 */
final class HighsProcess {
  private HighsProcess() {}

  public static void main(String[] none) throws IOException, InterruptedException {
    BlockingQueue<HighsQuestion> questions = new LinkedBlockingQueue<>();
    Thread reader = new Thread(() -> read(questions), "questions");
    reader.setDaemon(true);
    reader.start();
    Runtime.getRuntime().addShutdownHook(new Thread(() -> await(reader), "signals"));
    while (true) {
      HighsQuestion question = questions.take();
      HighsAnswers answers = new HighsAnswers(question.answers());
      answers.end(solve(question, answers));
    }
  }

  /** Ctrl-C reaches this process too: what it means here, the asking process says. */
  private static void await(Thread reader) {
    try {
      reader.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void read(BlockingQueue<HighsQuestion> questions) {
    Optional<HighsAnswers> answers = Optional.empty();
    try (DataInputStream in = new DataInputStream(new BufferedInputStream(System.in))) {
      while (true) {
        HighsQuestion question = HighsQuestion.read(in);
        answers = Optional.of(new HighsAnswers(question.answers()));
        questions.add(question);
      }
    } catch (IOException e) {
      answers.ifPresent(HighsProcess::delete);
      Runtime.getRuntime().halt(e instanceof EOFException ? 0 : 1);
    }
  }

  /** Nobody is left to read them. */
  private static void delete(HighsAnswers answers) {
    try {
      answers.delete();
    } catch (IOException e) {
      // a file too many in the folder for temporary ones
    }
  }

  private static Scip.End solve(HighsQuestion question, HighsAnswers answers) {
    Model model = question.model();
    int columns = model.columns().size();
    for (int i = 0; i < HighsAnswers.COLUMNS_BEHIND; i++) {
      model.real(0, 0);
    }
    Scip.Task task = Scip.Task.of(question.objective(), List.of(), false, Scip.Budget.ofMillis(0));
    try (Loaded loaded = new Loaded("HIGHS", model, task)) {
      MPSolver solver = loaded.solver();
      solver.setTimeLimit(question.milliseconds());
      set(solver, question, answers);
      return switch (status(solver)) {
        case OPTIMAL -> best(solver, Arrays.copyOf(loaded.point(), columns));
        case INFEASIBLE -> new Scip.End(new double[0], Double.POSITIVE_INFINITY, true);
        default -> Scip.End.nothing();
      };
    }
  }

  private static Scip.End best(MPSolver solver, double[] point) {
    double value = solver.objective().value();
    return new Scip.End(point, Relaxation.safe(value), true);
  }

  /** The status of a limit reached has no name in OR-Tools, which then throws. */
  private static MPSolver.ResultStatus status(MPSolver solver) {
    try {
      return solver.solve();
    } catch (IllegalArgumentException e) {
      return MPSolver.ResultStatus.NOT_SOLVED;
    }
  }

  /** Settings are read when it solves; what is said of them before then means nothing. */
  private static void set(MPSolver solver, HighsQuestion question, HighsAnswers answers) {
    String settings =
        "output_flag=true,log_to_console=false,log_file="
            + answers.log()
            + ",threads=1,mip_rel_gap=0,mip_improving_solution_save=true"
            + ",mip_improving_solution_file="
            + answers.solutions()
            + ",mip_max_nodes="
            + question.nodes();
    solver.enableOutput();
    solver.setSolverSpecificParametersAsString(settings);
  }
}
