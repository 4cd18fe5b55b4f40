package io.frostlot.plan;

import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The least regular pack price per piece of each item, over all chosen suppliers: no sale, no
 * shipping; to seven significant digits.
 */
public final class ListPrices {
  private final Map<String, BigDecimal> perPiece = new HashMap<>();

  public ListPrices(List<Supplier> suppliers) {
    for (Supplier supplier : suppliers) {
      for (Pack pack : supplier.sheet().packs()) {
        BigDecimal price =
            pack.price().amount().divide(BigDecimal.valueOf(pack.pieces()), MathContext.DECIMAL32);
        pack.items().forEach(item -> perPiece.merge(item.id(), price, BigDecimal::min));
      }
    }
  }

  /** Empty where no supplier sells it. */
  public Optional<BigDecimal> of(Item item) {
    return Optional.ofNullable(perPiece.get(item.id()));
  }
}
