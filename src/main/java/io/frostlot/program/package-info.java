/**
 * The integer program: decisions, one class per rule of the world with two faces (put to the
 * solver; judged on a finished plan in exact decimals), and the engine that solves level by level.
 * The only room that knows OR-Tools; it knows nothing of files, reports or commands.
 */
@NullMarked
package io.frostlot.program;

import org.jspecify.annotations.NullMarked;
