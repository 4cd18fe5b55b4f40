package io.frostlot.sharing;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;

/**
 * What a member wants out of a shared order.
 *
 * @param own what is counted by the piece, and what is the member's own affair: not shared
 * @param goods value of the pieces that it wants
 * @param grams of these
 * @param litres room of these in a box
 */
public record Burden(Money own, Money goods, Grams grams, Litres litres) {}
