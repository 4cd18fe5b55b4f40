/** Checks of what is measured with. */
@NullMarked
package io.frostlot.bench;

import org.jspecify.annotations.NullMarked;
