package io.frostlot.files;

import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/**
 * The orders of a plan as CSV (RFC 4180), one row per pack; described by {@code
 * order-sheet.table-schema.json}. Text that a spreadsheet would take for a formula is made harmless
 * with an apostrophe before it.
 */
public final class OrderSheets {
  private static final List<String> HEADER =
      List.of(
          "supplier",
          "supplier_name",
          "order_by",
          "arrives_earliest",
          "arrives_latest",
          "item",
          "kind",
          "size_word",
          "pack_count",
          "packs",
          "packs_under_sales",
          "list_price",
          "currency");
  private final World world;

  private OrderSheets(World world) {
    this.world = world;
  }

  /** One sheet of all orders. */
  public static String all(World world, Plan plan) {
    return new OrderSheets(world).sheet(plan.orders());
  }

  /** A file per supplier that is ordered from, ID.csv. */
  public static Map<String, String> bySupplier(World world, Plan plan) {
    Map<String, List<Order>> orders =
        plan.orders().stream()
            .collect(
                Collectors.groupingBy(
                    order -> order.slot().supplier(), TreeMap::new, Collectors.toList()));
    Map<String, String> sheets = new LinkedHashMap<>();
    orders.forEach(
        (supplier, some) -> sheets.put(supplier + ".csv", new OrderSheets(world).sheet(some)));
    return sheets;
  }

  private String sheet(List<Order> orders) {
    StringBuilder text = new StringBuilder(line(HEADER));
    orders.forEach(order -> order.lines().forEach(line -> text.append(line(row(order, line)))));
    return text.toString();
  }

  /** A line of a table. */
  static String line(List<String> cells) {
    return CSVFormat.RFC4180.format(cells.toArray()) + "\r\n";
  }

  private List<String> row(Order order, Order.Line line) {
    return List.of(
        harmless(order.slot().supplier()),
        harmless(world.supplier(order.slot().supplier()).name()),
        order.slot().ordered().toString(),
        order.slot().arrivesEarliest().toString(),
        order.slot().arrivesLatest().toString(),
        harmless(line.pack().item().name()),
        harmless(line.pack().item().kind()),
        harmless(line.pack().item().sizeWord()),
        String.valueOf(line.pack().pieces()),
        String.valueOf(line.packs()),
        harmless(
            line.underSale().entrySet().stream()
                .map(sale -> sale.getValue() + " " + sale.getKey())
                .collect(Collectors.joining("; "))),
        line.pack().price().toText(world.decimals()),
        world.scenario().currency().getCurrencyCode());
  }

  /**
   * Cells that begin with one of these are run as formulas by spreadsheets (OWASP, CSV injection).
   */
  static String harmless(String text) {
    return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
