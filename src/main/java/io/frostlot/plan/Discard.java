package io.frostlot.plan;

import java.time.LocalDate;

/**
 * Pieces thrown away at the start of a day, before the delivery; a decision, unlike going past
 * use-by.
 */
public record Discard(String lotId, LocalDate day, int pieces) {}
