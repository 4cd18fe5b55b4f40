package io.frostlot.program;

/** A variable of a {@link Model}, by its column. */
record Var(int index) {}
