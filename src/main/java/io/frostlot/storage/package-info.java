/**
 * Where prey lies: freezers with their litres, lots in hand and lots under way with their use-by
 * dates. It knows units and supply's items: nothing of animals, meals or prices.
 */
@NullMarked
package io.frostlot.storage;

import org.jspecify.annotations.NullMarked;
