package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.InvoiceJson;
import io.frostlot.plan.Invoice;
import io.frostlot.plan.Order;
import io.frostlot.plan.Settlement;
import io.frostlot.plan.Shared;
import io.frostlot.program.Engine;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.units.Money;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sheets say what settling the invoices of their joint orders comes to; amounts are derived by hand
 * beside their checks. Mice of the shop cost 4.00 and the trip 3.00.
 */
class SheetsSettleTest {
  private static final String ONE_SOON = "mouse,20,30,1,2031-01-03";
  private static final String FIVE = "mouse,20,30,5,2031-01-10";
  private static final String TEN_RABBITS = "rabbit,900,1100,10,2031-01-10";
  @TempDir Path folder;
  private GroupSamples samples;

  @BeforeEach
  void suppliers() throws IOException {
    samples = new GroupSamples(folder);
    samples.suppliers();
    samples.trips();
  }

  /**
   * Nobody collects before the 6th, so each fetches its first mouse, the host too: 7.00 each. The
   * box is 20 + 20 for all, 13.33 each, with one credit.
   */
  @Test
  void what_a_host_fetches_for_itself_is_its_own() throws IOException {
    String needs = ONE_SOON + "\n" + FIVE;
    Shared shared =
        share(
            ", \"handOvers\": [\"2031-01-06\"], \"sharing\": {\"hostCredit\": 3}",
            needs,
            needs,
            needs);

    assertThat(shared.sheets())
        .allSatisfy(it -> assertThat(it.account().pays().own()).isEqualTo(Money.of(7)));
    assertThat(pays(shared)).containsExactly("17.34", "21.83", "21.83");
    assertThat(InvoiceJson.all(shared)).containsOnlyKeys("north-2031-01-05.json");
    Shared.Part part = shared.parts().get(0);
    assertThat(part.plan().orders().stream().filter(order -> !part.isJoint(order)))
        .extracting(part::buyer)
        .containsExactlyInAnyOrder("ann", "bo", "cy");
    assertThat(settled(shared)).containsExactlyElementsOf(pays(shared));
  }

  /**
   * Ann goes to the shop for bo and cy, 3 + 8; all three have something of the box, 20 + 20. The
   * other ways are of one of these kinds.
   */
  @ParameterizedTest
  @ValueSource(strings = {"base-and-weight", "space", "alone", "nucleolus"})
  void invoices_settled_unchanged_come_to_the_sheets(String way) throws IOException {
    String sharing = ", \"sharing\": {\"way\": \"" + way + "\", \"hostCredit\": 3}";
    Shared shared = share(sharing, FIVE, ONE_SOON + "\n" + FIVE, ONE_SOON + "\n" + TEN_RABBITS);

    Shared.Part part = shared.parts().get(0);
    List<Order> joint = part.plan().orders().stream().filter(part::isJoint).toList();
    assertThat(joint).extracting(part::takers).contains(List.of("bo", "cy")).hasSize(2);
    assertThat(settled(shared)).containsExactlyElementsOf(pays(shared));
    Money all =
        shared.sheets().stream()
            .map(it -> it.account().pays().total())
            .reduce(Money::plus)
            .orElseThrow();
    assertThat(all).isEqualTo(Money.of(51));
  }

  /**
   * A bag is cut in halves or not at all: of two bags in a box, 20 + 20, one has ten and two have
   * five of the seven that each wants; four more are fetched for these, 16 + 3. A third of 59 each.
   */
  @ParameterizedTest
  @ValueSource(strings = {"base-and-weight", "alone"})
  void members_alike_pay_the_same_whoever_gets_which_pieces(String way) throws IOException {
    String seven = "mouse,20,30,7,2031-01-10";
    Shared shared = share(", \"sharing\": {\"way\": \"" + way + "\"}", seven, seven, seven);

    assertThat(pays(shared)).containsExactly("19.67", "19.67", "19.66");
    assertThat(shared.sheets())
        .extracting(sheet -> sheet.account().pays().goods())
        .contains(Money.of(7), Money.of(13));
    assertThat(settled(shared)).containsExactlyElementsOf(pays(shared));
  }

  /** One goes for another: what it costs is the other's, 5 mice and the trip, and no credit. */
  @Test
  void a_trip_for_one_is_shared_by_nobody() throws IOException {
    share(", \"sharing\": {\"hostCredit\": 3}", FIVE, FIVE);
    samples.put(
        "trip.json",
        """
        {"supplier": "corner", "ordered": "2031-01-02", "host": "ann",
         "lines": [{"item": "Mouse", "packCount": 1, "packs": 1}],
         "charges": [{"label": "trip", "amount": "3.00"}], "total": "7.00",
         "portions": [{"member": "bo", "item": "Mouse", "packCount": 1, "bag": 1, "pieces": 1}]}
        """);

    assertThat(settle("trip.json").sheets())
        .extracting(it -> it.pays().total())
        .containsExactly(Money.ZERO, Money.of(7));
  }

  /** As where another part of the group, with a host of its own, orders there on the same day. */
  @Test
  void two_boxes_of_one_supplier_and_day_are_two_files_and_two_boxes() throws IOException {
    Shared one = share("", FIVE, FIVE, FIVE);
    Invoice first = one.invoices().get(0);
    Invoice.Head head = first.head();
    Invoice other =
        new Invoice(
            new Invoice.Head(head.supplier(), head.ordered(), "cy", head.total()),
            first.lines(),
            first.portions(),
            first.mishaps(),
            first.agreed(),
            first.evened());
    Shared two =
        new Shared(
            one.group(),
            one.parts(),
            one.sheets(),
            one.ways(),
            one.payments(),
            List.of(first, other),
            one.findings());

    assertThat(InvoiceJson.all(two))
        .containsOnlyKeys("north-2031-01-05.json", "north-2031-01-05-2.json");
    assertThat(other.head().box()).isNotEqualTo(head.box());
  }

  private static List<String> pays(Shared shared) {
    return shared.sheets().stream().map(sheet -> sheet.account().pays().total().toText(2)).toList();
  }

  /** Orders of each one's own, and what the invoices come to that were written and read again. */
  private List<String> settled(Shared shared) throws IOException {
    List<Money> pays = new ArrayList<>();
    shared.sheets().forEach(sheet -> pays.add(sheet.account().pays().own()));
    for (Map.Entry<String, String> file : InvoiceJson.all(shared).entrySet()) {
      samples.put(file.getKey(), file.getValue());
      List<Settlement.Sheet> sheets = settle(file.getKey()).sheets();
      for (int i = 0; i < sheets.size(); i++) {
        pays.set(i, pays.get(i).plus(sheets.get(i).pays().total()));
      }
    }
    assertThat(shared.invoices()).extracting(Invoice::mishaps).allMatch(List::isEmpty);
    return pays.stream().map(it -> it.toText(2)).toList();
  }

  private Settlement.Account settle(String file) {
    SettleBox.Outcome outcome =
        new SettleBox(new Glop()).settle(folder, folder.resolve(file), profiles());
    assertThat(outcome).isInstanceOf(SettleBox.Done.class);
    return ((SettleBox.Done) outcome).settlement().now();
  }

  private List<Path> profiles() {
    return List.of(folder.resolve("supplier-profiles"));
  }

  private Shared share(String more, String... needs) throws IOException {
    List<String> names = List.of("ann", "bo", "cy").subList(0, needs.length);
    for (int i = 0; i < needs.length; i++) {
      samples.member(names.get(i), needs[i], "north", "corner");
    }
    samples.group(more, names.toArray(String[]::new));
    ShareBox box = new ShareBox(Engine::solve, new Glop());
    ShareBox.Ready ready = (ShareBox.Ready) box.prepare(folder, profiles());
    Limits limits = new Limits(Duration.ofMinutes(10), OptionalInt.of(10));
    return box.share(
            ready.group(), new ShareBox.Work(limits, Optional.of(limits)), new NobodyLooksOn())
        .orElseThrow();
  }
}
