package io.frostlot.program;

import static io.frostlot.program.ByHand.boxes;
import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaxTest {
  private static OrderTerms.Tax tax(String percent, boolean onCharges) {
    return new OrderTerms.Tax(Percent.of(percent), onCharges);
  }

  /** 5 % of 0.50 is 0.025, half-up 0.03: twice in two orders; 5 % of 1.00 is 0.05 in one. */
  @Test
  void tax_is_rounded_order_by_order() {
    Pack half = pack(MOUSE, 1, "0.50");
    SmallSupplier source = SmallSupplier.selling(half).tax(tax("5", false));
    SmallWorld keepsADay =
        new SmallWorld(2, source)
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(1, 1)
            .need(2, 1);
    ByHand two = new ByHand(keepsADay.world()).order(1, packs(half, 1)).order(2, packs(half, 1));
    allowed(two.eat("day 1", "O1").eat("day 2", "O2"), "1.06");
    assertThat(optimum(keepsADay)).isEqualTo(costs("1.06"));
    SmallWorld keeps = new SmallWorld(2, source).need(1, 1).need(2, 1);
    assertThat(optimum(keeps)).isEqualTo(costs("1.05"));
  }

  /** 10.00 less a quarter are 7.50, and 10 % of that. */
  @Test
  void what_is_discounted_is_not_taxed() {
    Pack ten = pack(MOUSE, 1, "10.00");
    OrderTerms.Discount quarter =
        new OrderTerms.Discount(
            "d",
            Period.ALWAYS,
            DateBasis.ORDER,
            OrderTerms.Subtotal.GOODS,
            List.of(new OrderTerms.Tier(Money.of(10), Percent.of("25"), Money.ZERO)),
            true);
    SmallWorld world =
        new SmallWorld(1, SmallSupplier.selling(ten).discounts(quarter).tax(tax("10", false)))
            .need(1, 1);
    ByHand plan = new ByHand(world.world()).taking(Set.of("d"), 1, packs(ten, 1));
    allowed(plan.eat("day 1", "O1"), "8.25");
    assertThat(optimum(world)).isEqualTo(costs("8.25"));
  }

  /** Shipping 5.00, waived from 10.00 on; 10 % on goods, or on what is left of charges too. */
  @ParameterizedTest(name = "goods {0}, charges taxed {1}: {2}")
  @CsvSource({
    "9.00, false, 14.90",
    "9.00, true, 15.40",
    "10.00, false, 11.00",
    "10.00, true, 11.00"
  })
  void what_is_waived_is_not_taxed(String price, boolean onCharges, String total) {
    Pack one = pack(MOUSE, 1, price);
    Shipping.Rate rate = new Shipping.Rate(Money.of(5), Money.ZERO, Money.ZERO);
    OrderTerms.FreeShipping free =
        new OrderTerms.FreeShipping(
            Period.ALWAYS,
            DateBasis.ORDER,
            new OrderTerms.Threshold(Money.of(10), OrderTerms.Subtotal.GOODS),
            Set.of(OrderTerms.Charge.SHIPPING));
    SmallSupplier source =
        SmallSupplier.selling(one)
            .shipping(new Shipping(rate, Shipping.Packing.FREE, List.of(), List.of()))
            .freeShipping(free)
            .tax(tax("10", onCharges))
            .delivery(SmallSupplier.CARRIER);
    SmallWorld world = new SmallWorld(1, source).need(1, 1);
    ByHand plan = new ByHand(world.world()).sent(1, boxes(1), packs(one, 1));
    allowed(plan.eat("day 1", "O1"), total);
    assertThat(optimum(world)).isEqualTo(costs(total));
  }

  /** 2.00 and 10 % are dearer than 2.15 with the tax in it: two are 4.30. */
  @Test
  void suppliers_are_compared_with_their_tax() {
    SmallWorld world =
        new SmallWorld(
                1,
                SmallSupplier.selling(SINGLE).tax(tax("10", false)),
                SmallSupplier.named("stream", pack(MOUSE, 1, "2.15")))
            .need(1, 2);
    assertThat(optimum(world)).isEqualTo(costs("4.30"));
  }
}
