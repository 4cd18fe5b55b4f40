package io.frostlot.plan;

import java.util.List;

/**
 * Minimise a sum over real numbers of any sign, under rows.
 *
 * @param objective one coefficient per number
 */
public record LinearProgram(double[] objective, List<Row> rows) {
  public LinearProgram {
    rows = List.copyOf(rows);
  }

  /**
   * The sum lies between two values, either of which may be infinite.
   *
   * @param coefficients one per number
   * @param within at least its least, at most its most
   */
  public record Row(double[] coefficients, Range within) {}
}
