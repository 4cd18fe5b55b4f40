package io.frostlot.program;

import io.frostlot.supply.Item;

/** What one keeper has of an item: only that keeper's animals are fed from it. */
record Ware(String keeper, Item item) {}
