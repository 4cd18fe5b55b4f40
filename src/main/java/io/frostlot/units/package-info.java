/**
 * Quantities that carry their unit: money, grams, litres, percents, and periods of days. They are
 * exact and refuse what makes no sense. This room knows no other one, and nothing of animals, prey
 * or suppliers.
 */
@NullMarked
package io.frostlot.units;

import org.jspecify.annotations.NullMarked;
