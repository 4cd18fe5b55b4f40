/**
 * An order plan as plain numbers: the scenario, orders, lots, feedings, leftovers, the bill, how
 * good the answer is, and a day-by-day replay that checks a plan by itself. It knows the rooms
 * below: nothing of integer programs, files, reports or commands.
 */
@NullMarked
package io.frostlot.plan;

import org.jspecify.annotations.NullMarked;
