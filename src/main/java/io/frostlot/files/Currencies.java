package io.frostlot.files;

import java.util.Currency;
import java.util.Optional;

/** ISO 4217 codes. */
public final class Currencies {
  private Currencies() {}

  /** Empty for an unknown code and for one without coins, such as XAU. */
  public static Optional<Currency> of(String code) {
    return Currency.getAvailableCurrencies().stream()
        .filter(currency -> currency.getCurrencyCode().equals(code))
        .filter(currency -> currency.getDefaultFractionDigits() >= 0)
        .findFirst();
  }

  /** Empty, with a problem added, for an unknown code and for one without coins, such as XAU. */
  static Optional<Currency> read(Json.Obj document, Problems problems) {
    if (!document.has("currency")) {
      return Optional.empty();
    }
    Json code = document.get("currency");
    Optional<Currency> found = of(document.text("currency"));
    if (found.isEmpty()) {
      problems.add(
          new Problem(
              code.where(), code.shown(), "an ISO 4217 code of money in use, such as EUR", ""));
    }
    return found;
  }
}
