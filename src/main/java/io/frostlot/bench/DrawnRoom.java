package io.frostlot.bench;

import io.frostlot.plan.Scenario;

/**
 * A room as it was drawn.
 *
 * @param calibration what its hardness was estimated from
 */
public record DrawnRoom(RoomSize size, long seed, Scenario scenario, Calibration calibration) {}
