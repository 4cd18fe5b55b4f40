package io.frostlot.supply;

/** Which date of a slot a promotion follows. */
public enum DateBasis {
  ORDER,
  SHIP,
  ARRIVAL
}
