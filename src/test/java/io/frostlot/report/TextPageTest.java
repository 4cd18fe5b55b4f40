package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextPageTest {
  private static final String LONG = "x".repeat(100);

  @Test
  void words_go_to_the_next_line_and_hang_under_the_mark() {
    Page page = new TextPage(72);
    page.point("word ".repeat(15).strip());
    assertThat(page).hasToString("  - " + "word ".repeat(13).strip() + "\n" + "    word word\n");
  }

  @Test
  void names_of_any_length_stay_on_the_page() {
    Page page = new TextPage(80);
    page.entry("A");
    page.detail("into " + LONG, LONG + " and " + LONG);
    page.amount(LONG, "12.50");
    page.table(Table.of("name", ">sum", "more").row(LONG, "12.50", LONG));
    assertThat(page.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(page.toString().replaceAll("[^x]", "")).hasSize(600);
  }

  @Test
  void words_that_belong_together_are_not_parted() {
    Page page = new TextPage(72);
    page.say(
        "x".repeat(60)
            + " by Tue 7 Jan 2031".replace(' ', Wording.NO_BREAK).replaceFirst("\u00a0", " "));
    assertThat(page).hasToString("  " + "x".repeat(60) + "\n  by Tue 7 Jan 2031\n");
  }

  @Test
  void numbers_stand_right_and_are_not_wrapped() {
    Page page = new TextPage(80);
    page.table(Table.of("item", ">pieces").row("Hopper", "5").row("Pinky", "1200"));
    assertThat(page).hasToString("  item    pieces\n  Hopper       5\n  Pinky     1200\n");
  }
}
