/**
 * Who pays what in a shared order, as a cooperative game: members, what each subgroup would pay by
 * itself, ways to share, and whether somebody has a reason to leave. It knows what a plan is and
 * the rooms below; nothing of integer programs, solvers, files, reports or commands.
 */
@NullMarked
package io.frostlot.sharing;

import org.jspecify.annotations.NullMarked;
