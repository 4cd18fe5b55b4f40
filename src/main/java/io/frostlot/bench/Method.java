package io.frostlot.bench;

import io.frostlot.app.Planner;
import io.frostlot.plan.World;
import io.frostlot.program.ProgramSize;
import java.time.Duration;
import java.util.function.Function;

/**
 * A way of making plans.
 *
 * @param size of the program that it solves
 * @param most time for one room
 */
public record Method(
    String name, Planner planner, Function<World, ProgramSize> size, Duration most) {}
