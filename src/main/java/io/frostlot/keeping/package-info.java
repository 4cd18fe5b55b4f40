/**
 * What is kept: animals, how much of their weight a meal has and how that changes with growth,
 * feeding schedules, and how urgent a meal is. It knows units only: nothing of what can be bought,
 * of stock or of dates of orders.
 */
@NullMarked
package io.frostlot.keeping;

import org.jspecify.annotations.NullMarked;
