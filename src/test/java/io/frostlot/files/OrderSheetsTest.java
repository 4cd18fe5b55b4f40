package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.World;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderSheetsTest {
  private final World world = HandmadeRoom.world();

  @Test
  void a_supplier_gets_a_sheet_of_its_own() {
    assertThat(OrderSheets.bySupplier(world, HandmadePlan.plan(world)))
        .containsOnlyKeys("hillside.csv", "corner.csv")
        .containsEntry(
            "corner.csv",
            "supplier,supplier_name,order_by,arrives_earliest,arrives_latest,item,kind,size_word,pack_count,packs,packs_under_sales,list_price,currency\r\n"
                + "corner,Corner Shop"
                + " (invented),2031-02-10,2031-02-10,2031-02-10,Mouse,mouse,adult,1,2,,2.20,EUR\r\n");
  }

  @Test
  void one_sheet_holds_all_orders_in_the_columns_of_its_schema() {
    String sheet = OrderSheets.all(world, HandmadePlan.plan(world));
    assertThat(sheet.lines()).hasSize(4);
    assertThat(sheet).contains("Hopper,mouse,hopper,25,2,2 winter,14.25,EUR");
    assertThat(sheet.lines().findFirst().orElseThrow().split(",", -1))
        .containsExactlyElementsOf(
            Resources.json("schema/order-sheet.table-schema.json").objects("fields").stream()
                .map(field -> field.text("name"))
                .toList());
  }

  /** Characters from the list of the OWASP page on CSV injection. */
  @ParameterizedTest
  @CsvSource({"=1+1", "+1", "-1", "@sum"})
  void text_that_a_spreadsheet_would_run_is_made_harmless(String text) {
    assertThat(OrderSheets.harmless(text)).isEqualTo("'" + text);
  }

  @Test
  void control_characters_at_the_start_are_made_harmless_and_other_text_is_left_alone() {
    assertThat(OrderSheets.harmless("\t=1")).isEqualTo("'\t=1");
    assertThat(OrderSheets.harmless("\r=1")).isEqualTo("'\r=1");
    assertThat(OrderSheets.harmless("Adult mouse - large")).isEqualTo("Adult mouse - large");
    assertThat(OrderSheets.harmless("")).isEmpty();
  }
}
