/**
 * The command line: options in, text out, exit codes. A thin edge over {@code app}; the only room
 * that knows picocli, terminals and signals.
 */
@NullMarked
package io.frostlot.cli;

import org.jspecify.annotations.NullMarked;
