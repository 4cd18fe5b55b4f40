package io.frostlot.files;

import java.util.Currency;
import java.util.Optional;

/** Reads ISO 4217 codes. */
final class Currencies {
  private Currencies() {}

  /** Empty, with a problem added, for an unknown code and for one without coins, such as XAU. */
  static Optional<Currency> read(Json.Obj document, Problems problems) {
    if (!document.has("currency")) {
      return Optional.empty();
    }
    Json code = document.get("currency");
    Optional<Currency> found =
        Currency.getAvailableCurrencies().stream()
            .filter(currency -> currency.getCurrencyCode().equals(document.text("currency")))
            .filter(currency -> currency.getDefaultFractionDigits() >= 0)
            .findFirst();
    if (found.isEmpty()) {
      problems.add(
          new Problem(
              code.where(), code.shown(), "an ISO 4217 code of money in use, such as EUR", ""));
    }
    return found;
  }
}
