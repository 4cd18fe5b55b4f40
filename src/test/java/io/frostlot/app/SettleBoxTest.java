package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.Problem;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Settlement;
import io.frostlot.program.Glop;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sums beside the checks are done by hand. */
class SettleBoxTest {
  private static final String EQUAL = "\"way\": \"equal\"";
  private static final String CY_OUT = ", \"droppedOut\": [\"cy\"]";
  @TempDir Path folder;

  /** 21 of shipping, 7 each; five, five and ten mice at 1.00. */
  @Test
  void shares_settle_the_invoice_and_the_host_is_paid() throws IOException {
    Settlement settlement = settle(EQUAL, "");

    assertThat(pays(settlement)).containsExactly("12", "12", "17", "0");
    assertThat(settlement.now().payments().toString())
        .contains("from=bo, to=ann, amount=12", "from=cy, to=ann, amount=17");
    assertThat(settlement.more("cy")).isEqualTo(Money.ZERO);
  }

  /** Half of 21 in equal parts of 3.50, the other 10.50 by grams, 1:1:2 : 2.625, 2.625, 5.25. */
  @Test
  void the_usual_way_is_an_equal_base_and_weight() throws IOException {
    assertThat(pays(settle("", ""))).containsExactly("11.13", "11.12", "18.75", "0");
  }

  /** Common practice (no source): about 29 of a flat charge is about ten for each of three. */
  @Test
  void a_flat_charge_is_split_to_the_cent() throws IOException {
    write(EQUAL, "");
    String text = Files.readString(folder.resolve("invoice.json"));
    new GroupSamples(folder)
        .put("invoice.json", text.replace("21.00", "29.00").replace("41.00", "49.00"));

    assertThat(pays(settled())).containsExactly("14.67", "14.67", "19.66", "0");
  }

  /** The others pay bo's and cy's 1.50 to ann. */
  @Test
  void the_host_has_its_credit() throws IOException {
    assertThat(pays(settle(EQUAL + ", \"hostCredit\": 3", "")))
        .containsExactly("9", "13.5", "18.5", "0");
  }

  /** 4 + 6 + 10 were agreed, the invoice asks for 21: a third of one more for each. */
  @Test
  void shares_that_look_at_subgroups_are_those_agreed() throws IOException {
    String agreed =
        ", \"agreed\": [{\"member\": \"ann\", \"shared\": \"4.00\"},"
            + " {\"member\": \"bo\", \"shared\": \"6.00\"},"
            + " {\"member\": \"cy\", \"shared\": \"10.00\"}]";

    assertThat(pays(settle("\"way\": \"shapley\"", agreed)))
        .containsExactly("9.34", "11.33", "20.33", "0");
    write("\"way\": \"nucleolus\"", "");
    assertThat(problems()).anyMatch(it -> it.toString().contains("found no agreed shares"));
  }

  /**
   * Where bo takes all ten: until-taken and free share 21 by two, keeps-share leaves cy its 7.
   * Where bo takes five: cy is in it with five until they are taken; free, they are ann's and paid
   * by two: 41 - 15 = 26, 13 each.
   */
  @ParameterizedTest
  @CsvSource({
    "until-taken, 10, 15.5 25.5 0 0",
    "free,        10, 15.5 25.5 0 0",
    "keeps-share, 10, 12 22 7 0",
    "until-taken,  5, 12 17 12 0",
    "free,         5, 18 23 0 0",
    "keeps-share,  5, 12 17 12 0"
  })
  void who_drops_out_pays_what_was_agreed(String rule, int pieces, String expected)
      throws IOException {
    String sharing = EQUAL + ", \"dropOut\": \"" + rule + "\"";

    Settlement settlement = settle(sharing, CY_OUT + InvoiceSamples.taken("bo", pieces));

    assertThat(String.join(" ", pays(settlement))).isEqualTo(expected);
    assertThat(settlement.before().sheet("cy").pays().total()).isEqualTo(Money.of(17));
    assertThat(handedOut(settlement)).isEqualTo(20);
  }

  /**
   * By an equal base and weight: cy pays 18.75 as ordered, whoever takes over its pieces pays them
   * besides, and nobody else pays more or less.
   */
  @Test
  void who_drops_out_and_keeps_its_share_changes_nothing_for_those_who_take_nothing()
      throws IOException {
    String keeps = "\"dropOut\": \"keeps-share\"";

    assertThat(pays(settle(keeps, CY_OUT))).containsExactly("11.13", "11.12", "18.75", "0");
    assertThat(pays(settle(keeps, CY_OUT + InvoiceSamples.taken("bo", 10))))
        .containsExactly("11.13", "21.12", "8.75", "0");
    assertThat(pays(settle(keeps, CY_OUT + InvoiceSamples.taken("dee", 5))))
        .containsExactly("11.13", "11.12", "13.75", "5");
  }

  /** Four share 21: 5.25 each; dee takes half of cy's ten. */
  @Test
  void who_joins_late_pays_like_the_others() throws IOException {
    assertThat(pays(settle(EQUAL, InvoiceSamples.taken("dee", 5))))
        .containsExactly("10.25", "10.25", "10.25", "10.25");
  }

  /**
   * Four of cy's ten are lost, 1.00 of their 4.00 is paid back. By cy: 6 + 3 + 7. By all who wanted
   * mice: the 3.00 as 5:5:10. By all: 40 - 16 = 24, 8 each.
   */
  @ParameterizedTest
  @CsvSource({"holder, 12 12 16 0", "item, 12.75 12.75 14.5 0", "all, 13 13 14 0"})
  void lost_pieces_are_borne_as_agreed(String rule, String expected) throws IOException {
    Settlement settlement =
        settle(EQUAL + ", \"lostPieces\": \"" + rule + "\"", InvoiceSamples.lost(2, 4));

    assertThat(String.join(" ", pays(settlement))).isEqualTo(expected);
    assertThat(settlement.now().total()).isEqualTo(Money.of(40));
    assertThat(handedOut(settlement)).isEqualTo(16);
  }

  /** One and a half each of three: the odd one comes off the first. */
  @Test
  void pieces_lost_from_a_cut_bag_come_off_its_portions() throws IOException {
    Settlement settlement = settle(EQUAL, InvoiceSamples.lost(1, 3));

    assertThat(settlement.now().sheet("ann").portions().get(0).pieces()).isEqualTo(3);
    assertThat(settlement.now().sheet("bo").portions().get(0).pieces()).isEqualTo(4);
  }

  @Test
  void whatever_happens_the_shares_add_up_and_every_piece_is_somebodys() throws IOException {
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      String[] ways = {"equal", "weight", "value", "space", "base-and-weight"};
      String[] out = {"keeps-share", "until-taken", "free"};
      String[] lost = {"holder", "item", "all"};
      int gone = random.nextInt(10) + 1;
      String more =
          (random.nextBoolean() ? CY_OUT : "")
              + InvoiceSamples.taken(random.nextBoolean() ? "bo" : "dee", random.nextInt(10) + 1)
              + InvoiceSamples.lost(random.nextInt(2) + 1, gone);
      Settlement settlement =
          settle(
              "\"way\": \"%s\", \"dropOut\": \"%s\", \"lostPieces\": \"%s\", \"hostCredit\": 1"
                  .formatted(ways[i % 5], out[random.nextInt(3)], lost[random.nextInt(3)]),
              more);

      Money sum =
          settlement.now().sheets().stream()
              .map(sheet -> sheet.pays().total())
              .reduce(Money.ZERO, Money::plus);
      assertThat(sum).as(more).isEqualTo(settlement.now().total()).isEqualTo(Money.of(40));
      assertThat(handedOut(settlement)).as(more).isEqualTo(20 - gone);
    }
  }

  @Test
  void says_which_mishap_cannot_have_been() throws IOException {
    write(EQUAL, ", \"droppedOut\": [\"ann\"]" + InvoiceSamples.taken("bo", 11));
    assertThat(problems().toString())
        .contains("found \"ann\", expected a member other than the host")
        .contains("found 11, expected at most the 10 that cy has");
    write(EQUAL, InvoiceSamples.taken("cy", 1) + InvoiceSamples.lost(1, 11));
    assertThat(problems().toString())
        .contains("found \"cy\", expected another member")
        .contains("found 11, expected no more than the bag holds");
  }

  private Settlement settle(String sharing, String more) throws IOException {
    write(sharing, more);
    return settled();
  }

  private void write(String sharing, String more) throws IOException {
    InvoiceSamples samples = new InvoiceSamples(new GroupSamples(folder));
    samples.group(sharing);
    samples.invoice(more);
  }

  private SettleBox.Outcome outcome() {
    return new SettleBox(new Glop())
        .settle(
            folder, folder.resolve("invoice.json"), List.of(folder.resolve("supplier-profiles")));
  }

  private Settlement settled() {
    SettleBox.Outcome outcome = outcome();
    assertThat(outcome).isInstanceOf(SettleBox.Done.class);
    return ((SettleBox.Done) outcome).settlement();
  }

  private List<Problem> problems() {
    return ((SettleBox.Refused) outcome()).problems();
  }

  private static List<String> pays(Settlement settlement) {
    List<String> pays = new ArrayList<>();
    settlement.now().sheets().forEach(sheet -> pays.add(sheet.pays().total().toString()));
    return pays;
  }

  private static int handedOut(Settlement settlement) {
    return settlement.now().sheets().stream()
        .flatMap(sheet -> sheet.portions().stream())
        .mapToInt(Invoice.Portion::pieces)
        .sum();
  }
}
