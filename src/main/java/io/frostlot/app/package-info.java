/**
 * One class per thing that a keeper asks for, put together from the rooms below: reading, planning,
 * comparing. It knows nothing of terminals, options or pages.
 */
@NullMarked
package io.frostlot.app;

import org.jspecify.annotations.NullMarked;
