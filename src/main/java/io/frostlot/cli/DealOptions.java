package io.frostlot.cli;

import io.frostlot.files.TypedDeal;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A deal in options; each is given to the reader of deals as it was typed. */
final class DealOptions {
  private static final String USUAL_DATE = "order";
  private static final String A_DAY = "expected a date such as 2031-01-31";

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
  private String follows = USUAL_DATE;

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
    if (isEmpty()) {
      boolean other =
          isOnPacks() || isOnOrders() || !(from + to).isEmpty() || !follows.equals(USUAL_DATE);
      return other ? List.of("A sale that is typed needs --supplier.") : List.of();
    }
    if ((freeShipping || !spend.isEmpty()) && isOnPacks()) {
      return List.of(
          "--spend and --free-shipping are for whole orders: no item, price, take or limit.");
    }
    if (freeShipping && (!(percent + save).isEmpty() || combinable)) {
      return List.of("--free-shipping goes with --spend, --from, --to and --follows only.");
    }
    if (spend.isEmpty()) {
      return save.isEmpty() ? List.of() : List.of("--save goes with --spend.");
    }
    return freeShipping || !(percent + save).isEmpty()
        ? List.of()
        : List.of("--spend goes with --percent, --save or --free-shipping.");
  }

  /** The complaint about the days, where there is one. */
  Optional<String> wrongDays(Period planning) {
    String first = first(planning);
    String last = last(planning);
    if (!isDay(first)) {
      return Optional.of("--from: found \"%s\", %s".formatted(first, A_DAY));
    }
    if (!isDay(last)) {
      return Optional.of("--to: found \"%s\", %s".formatted(last, A_DAY));
    }
    return LocalDate.parse(last).isBefore(LocalDate.parse(first))
        ? Optional.of("--to: found \"%s\", expected no day before %s".formatted(last, first))
        : Optional.empty();
  }

  private static boolean isDay(String text) {
    try {
      return text.equals(LocalDate.parse(text).toString());
    } catch (DateTimeParseException e) {
      return false;
    }
  }

  private String first(Period planning) {
    return from.isEmpty() ? planning.from().toString() : from;
  }

  private String last(Period planning) {
    return to.isEmpty() ? planning.to().toString() : to;
  }

  private boolean isOnPacks() {
    return !items.isEmpty() || !(price + take + pay + mostAnOrder + mostInAll).isEmpty();
  }

  private boolean isOnOrders() {
    return !(percent + spend + save).isEmpty() || freeShipping || combinable;
  }

  TypedDeal deal(Period planning) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("when", TypedDeal.quoted(first(planning) + "/" + last(planning)));
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
