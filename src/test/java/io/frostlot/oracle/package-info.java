/**
 * What must come out, found the long way: random tiny worlds, every order that could be placed in
 * them and every way of feeding, priced in plain arithmetic. Knows nothing of the integer program.
 */
@NullMarked
package io.frostlot.oracle;

import org.jspecify.annotations.NullMarked;
