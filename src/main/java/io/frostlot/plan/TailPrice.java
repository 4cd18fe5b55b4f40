package io.frostlot.plan;

import io.frostlot.forecast.Option;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a meal of the tail costs when no leftover serves it: the least regular pack price per piece
 * over its options at all chosen suppliers, times the pieces; no sale, no shipping. Per piece to
 * ten significant digits, per meal to four decimals.
 */
final class TailPrice {
  private final Map<String, BigDecimal> perPiece = new HashMap<>();

  TailPrice(List<Supplier> suppliers) {
    for (Supplier supplier : suppliers) {
      for (Pack pack : supplier.sheet().packs()) {
        BigDecimal price =
            pack.price().amount().divide(BigDecimal.valueOf(pack.pieces()), MathContext.DECIMAL32);
        pack.items().forEach(item -> perPiece.merge(item.id(), price, BigDecimal::min));
      }
    }
  }

  /** Empty where no supplier sells any option. */
  Optional<Money> of(List<Option> options) {
    return options.stream()
        .filter(option -> perPiece.containsKey(option.item().id()))
        .map(o -> perPiece.get(o.item().id()).multiply(BigDecimal.valueOf(o.pieces())))
        .min(BigDecimal::compareTo)
        .map(price -> new Money(price.setScale(4, RoundingMode.HALF_UP)));
  }
}
