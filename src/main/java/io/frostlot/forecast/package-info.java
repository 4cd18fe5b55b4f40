/**
 * From what is kept to what will be eaten: dated meals, each with the prey that would do and how
 * much is lacking with it. It knows keeping, supply and units: nothing of stock, of orders or of
 * how a plan is made.
 */
@NullMarked
package io.frostlot.forecast;

import org.jspecify.annotations.NullMarked;
