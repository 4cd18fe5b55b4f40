/**
 * What can be bought: prey items, packs, suppliers with their price breaks, sales and order terms,
 * boxes and shipping, and the slots in which an order can be placed and received. It knows units
 * only: nothing of animals, freezers or meals.
 */
@NullMarked
package io.frostlot.supply;

import org.jspecify.annotations.NullMarked;
