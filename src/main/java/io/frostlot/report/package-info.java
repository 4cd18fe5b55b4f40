/**
 * A plan as a letter in plain text. It shows what other rooms have worked out and does no
 * arithmetic about the world: sums are those of the books. It knows nothing of files, programs or
 * commands.
 */
@NullMarked
package io.frostlot.report;

import org.jspecify.annotations.NullMarked;
