package io.frostlot.plan;

import java.util.Optional;

/** Solves linear programs. */
public interface LinearSolver {
  /** A best point, one value per number; empty where no point satisfies the rows. */
  Optional<double[]> minimise(LinearProgram program);
}
