package io.frostlot.cli;

import io.frostlot.files.TypedDeal;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;

/** A deal in options; each is given to the reader of deals as it was typed. */
final class DealOptions {
  @Option(names = "--supplier", paramLabel = "ID", description = "Who gives it.")
  private String supplier = "";

  @Option(
      names = "--item",
      paramLabel = "NAME",
      description = "Only for this item; may be given several times (default: all).")
  private List<String> items = new ArrayList<>();

  @Option(names = "--percent", paramLabel = "P", description = "Percent off.")
  private String percent = "";

  @Option(names = "--price", paramLabel = "MONEY", description = "This price a pack instead.")
  private String price = "";

  @Option(
      names = "--take",
      paramLabel = "N",
      description = "With --pay: N packs for the price of M.")
  private String take = "";

  @Option(names = "--pay", paramLabel = "M", description = "See --take.")
  private String pay = "";

  @Option(
      names = "--spend",
      paramLabel = "MONEY",
      description = "From this order value on: --percent, --save or --free-shipping.")
  private String spend = "";

  @Option(names = "--save", paramLabel = "MONEY", description = "With --spend: so much off.")
  private String save = "";

  @Option(
      names = "--free-shipping",
      description = "No shipping charge; with --spend: from that value on.")
  private boolean freeShipping;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day (default: the first planned).")
  private String from = "";

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "Last day (default: the last planned).")
  private String to = "";

  @Option(
      names = "--follows",
      paramLabel = "DATE",
      description = "Which date must lie within: order (default), ship or arrival.")
  private String follows = "order";

  @Option(names = "--most-an-order", paramLabel = "N", description = "Packs in one order at most.")
  private String mostAnOrder = "";

  @Option(names = "--most-in-all", paramLabel = "N", description = "Packs in all at most.")
  private String mostInAll = "";

  @Option(names = "--combinable", description = "Other promotions may be taken beside it.")
  private boolean combinable;

  boolean isEmpty() {
    return supplier.isEmpty();
  }

  List<String> wrong() {
    boolean other =
        !(percent + price + take + pay + spend + save + mostAnOrder + mostInAll).isEmpty()
            || freeShipping
            || !items.isEmpty();
    if (isEmpty()) {
      return other ? List.of("A sale that is typed needs --supplier.") : List.of();
    }
    if (freeShipping || !spend.isEmpty()) {
      return items.isEmpty() && (price + take + pay + mostAnOrder + mostInAll).isEmpty()
          ? List.of()
          : List.of(
              "--spend and --free-shipping are for whole orders: no item, price, take or limit.");
    }
    return save.isEmpty() ? List.of() : List.of("--save goes with --spend.");
  }

  TypedDeal deal(Period planning) {
    Map<String, String> fields = new LinkedHashMap<>();
    String first = from.isEmpty() ? planning.from().toString() : from;
    String last = to.isEmpty() ? planning.to().toString() : to;
    fields.put("when", TypedDeal.quoted(first + "/" + last));
    fields.put("follows", TypedDeal.quoted(follows));
    if (freeShipping) {
      fields.put("from", TypedDeal.quoted(spend.isEmpty() ? "0" : spend));
      return new TypedDeal(supplier, "freeShipping", fields);
    }
    fields.put("id", TypedDeal.quoted("the sale asked for"));
    fields.put("combinable", String.valueOf(combinable));
    if (!spend.isEmpty()) {
      Map<String, String> tier = new LinkedHashMap<>();
      tier.put("from", TypedDeal.quoted(spend));
      number(tier, "percentOff", percent);
      text(tier, "amountOff", save);
      fields.put("tiers", "[" + TypedDeal.object(tier) + "]");
      return new TypedDeal(supplier, "orderDiscounts", fields);
    }
    if (!items.isEmpty()) {
      fields.put("items", TypedDeal.texts(items));
    }
    number(fields, "percentOff", percent);
    text(fields, "price", price);
    number(fields, "take", take);
    number(fields, "pay", pay);
    number(fields, "mostPacksPerOrder", mostAnOrder);
    number(fields, "mostPacksInTotal", mostInAll);
    return new TypedDeal(supplier, "sales", fields);
  }

  /** What is no number is quoted, and so refused where it is read. */
  private static void number(Map<String, String> fields, String name, String typed) {
    if (!typed.isEmpty()) {
      boolean number = typed.matches("(0|[1-9][0-9]{0,8})([.][0-9]{1,6})?");
      fields.put(name, number ? typed : TypedDeal.quoted(typed));
    }
  }

  private static void text(Map<String, String> fields, String name, String typed) {
    if (!typed.isEmpty()) {
      fields.put(name, TypedDeal.quoted(typed));
    }
  }
}
