package io.frostlot.files;

import io.frostlot.supply.Supplier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** The folder of one supplier: {@code profile.json} and {@code prices.csv}. */
final class ProfileFile {
  private final String id;
  private final ScenarioFile scenario;
  private final Problems problems;

  ProfileFile(String id, ScenarioFile scenario, Problems problems) {
    this.id = id;
    this.scenario = scenario;
    this.problems = problems;
  }

  /**
   * A supplier as far as it could be read.
   *
   * @param supplier one element, or none where there were problems
   */
  record Offer(String id, PricesFile.Prices prices, List<Supplier> supplier) {}

  Offer read(Path folder) {
    int before = problems.count();
    Optional<JsonSchema.Checked> json = profile(folder.resolve("profile.json"));
    Optional<Currency> currency =
        json.flatMap(checked -> Currencies.read(checked.document(), problems));
    currency.ifPresent(it -> requireSame(it, json.orElseThrow().document().get("currency")));
    Table table =
        new TableReader(TableSchema.named("prices"), id + "/prices.csv", problems)
            .read(folder.resolve("prices.csv"));
    int decimals = currency.map(Currency::getDefaultFractionDigits).orElse(2);
    PricesFile.Prices prices = new PricesFile(id, scenario.kinds(), decimals).read(table);
    List<Supplier> supplier =
        json.stream()
            .map(checked -> new SupplierParts(checked, prices, problems))
            .flatMap(parts -> parts.supplier(id, scenario).stream())
            .filter(built -> problems.count() == before)
            .toList();
    return new Offer(id, prices, supplier);
  }

  private Optional<JsonSchema.Checked> profile(Path path) {
    String name = id + "/profile.json";
    return TextFile.read(path, name, problems)
        .flatMap(text -> JsonText.parse(text, name, problems))
        .flatMap(json -> JsonSchema.named("schema/profile.schema.json").check(json, problems));
  }

  private void requireSame(Currency currency, Json typed) {
    scenario
        .currency()
        .filter(it -> !it.equals(currency))
        .ifPresent(
            it ->
                problems.add(
                    new Problem(
                        typed.where(),
                        typed.shown(),
                        it.getCurrencyCode() + " as in scenario.json",
                        "One scenario has one currency.")));
  }

  /** A warning where the prices are older than the keeper wants. */
  static Optional<String> oldPrices(Supplier supplier, LocalDate from, int mostDays) {
    LocalDate dated = supplier.sheet().dated();
    return dated.plusDays(mostDays).isBefore(from)
        ? Optional.of(
            supplier.id()
                + ": the prices are of "
                + dated
                + ", more than "
                + mostDays
                + " days before "
                + from
                + ".")
        : Optional.empty();
  }

  /** The folder of a supplier in the first of some folders that has it. */
  static Optional<Path> find(String id, List<Path> folders) {
    return folders.stream()
        .map(folder -> folder.resolve(id))
        .filter(Files::isDirectory)
        .findFirst();
  }
}
