package io.frostlot.program;

import io.frostlot.plan.World;

/**
 * How large the program of a world is.
 *
 * @param classes of meals
 * @param rows before any is added that strengthens it
 * @param columns variables
 */
public record ProgramSize(int classes, int rows, int columns) {
  /** As the engine writes it. */
  public static ProgramSize usual(World world) {
    return of(world, Formulation.USUAL);
  }

  /** As {@link Plain} writes it. */
  public static ProgramSize plain(World world) {
    return of(world, Formulation.PLAIN);
  }

  private static ProgramSize of(World world, Formulation formulation) {
    Program program = Rules.program(world, formulation);
    return new ProgramSize(
        program.decisions().served().size(),
        program.model().rows().size(),
        program.model().columns().size());
  }
}
