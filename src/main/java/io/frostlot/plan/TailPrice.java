package io.frostlot.plan;

import io.frostlot.forecast.Option;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * What a meal of the tail costs when no leftover serves it: the least over its options of the list
 * price per piece times the pieces, to four decimals.
 */
record TailPrice(ListPrices prices) {
  /** Empty where no supplier sells any option. */
  Optional<Money> of(List<Option> options) {
    return options.stream()
        .flatMap(
            o -> prices.of(o.item()).map(p -> p.multiply(BigDecimal.valueOf(o.pieces()))).stream())
        .min(BigDecimal::compareTo)
        .map(price -> new Money(price.setScale(4, RoundingMode.HALF_UP)));
  }
}
