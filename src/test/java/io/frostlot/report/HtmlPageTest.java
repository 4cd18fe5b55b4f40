package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a page is made of, against the HTML Living Standard (WHATWG) and XML 1.0 (W3C). */
class HtmlPageTest {
  /** The HTML Living Standard, void elements. */
  private static final Set<String> VOID =
      Set.of(
          "area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source",
          "track", "wbr");

  private static final String NASTY = "<b>&amp; \"Ann's\" </style></li> ]]> 5 > 4";

  private static Page everything(String some) {
    Page page = new HtmlPage();
    page.title(some);
    page.fact(some, some);
    page.heading(some);
    page.entry(some);
    page.table(Table.of(some, ">" + some).row(some, some).under(List.of(some, some)).line(some));
    page.amount(some, some);
    page.total(some, some);
    page.detail(some, some);
    page.say(some);
    page.foot(some);
    page.sheet(some);
    page.point(some);
    page.detail(some, some);
    page.sign(some);
    return page;
  }

  private static ParsedPage parsed(Page page) {
    return ParsedPage.of(page.toString());
  }

  @Test
  void text_is_never_markup() {
    ParsedPage page = parsed(everything(NASTY));

    assertThat(page.all("//title | //h1 | //h2 | //h3 | //li/text()[normalize-space()]"))
        .containsOnly(NASTY);
    assertThat(page.all("//thead/tr/th | //tbody/tr/th | //tbody/tr/td")).containsOnly(NASTY);
    assertThat(page.all("//dd | //p[not(@class)]")).containsOnly(NASTY);
    assertThat(page.all("//b")).isEmpty();
  }

  /** The HTML Living Standard, phrasing content: what text may not hold; so too XML 1.0, Char. */
  @Test
  void what_no_document_may_hold_is_replaced() {
    Page page = new HtmlPage();
    page.say("a\u0000b\u0007c\u0085d\ufffee\ud800f\ufdd0g\tÄ \ud83d\udc0d");

    assertThat(parsed(page).all("//p"))
        .containsExactly("a\ufffdb\ufffdc\ufffdd\ufffde\ufffdf\ufffdg\tÄ \ud83d\udc0d");
  }

  @Test
  void only_void_elements_end_where_they_begin_and_they_have_no_other_end() {
    String html = everything("some").toString();

    assertThat(Pattern.compile("<(\\w+)[^<>]*/>").matcher(html).results())
        .isNotEmpty()
        .extracting((MatchResult it) -> it.group(1))
        .isSubsetOf(VOID);
    assertThat(Pattern.compile("</(\\w+)>").matcher(html).results())
        .extracting((MatchResult it) -> it.group(1))
        .doesNotContainAnyElementsOf(VOID);
  }

  @Test
  void nothing_is_fetched_or_run() {
    assertThat(everything("some").toString())
        .startsWith("<!DOCTYPE html>\n<html lang=\"en\">")
        .contains("default-src 'none'")
        .doesNotContainPattern("<(script|link|img|iframe|object|form|a)\\b")
        .doesNotContainPattern("@import|@font-face|url\\(|https?:|javascript:| on[a-z]+=");
  }

  @Test
  void points_that_follow_each_other_are_one_list_and_details_belong_to_their_point() {
    Page page = new HtmlPage();
    page.point("one");
    page.point("two");
    page.detail("low", "less");
    page.detail("high", "more");
    page.point("three");
    page.say("between");
    page.point("four");

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//ul[1]/li/text()[normalize-space()]"))
        .containsExactly("one", "two", "three");
    assertThat(parsed.all("//ul[1]/li[2]/dl/div/dt")).containsExactly("low:", "high:");
    assertThat(parsed.all("//ul[2]/li")).containsExactly("four");
    assertThat(parsed.all("//ul")).hasSize(2);
  }

  @Test
  void amounts_that_follow_each_other_are_one_table_until_a_gap() {
    Page page = new HtmlPage();
    page.amount("goods", "5.00");
    page.total("pays", "15.00");
    page.gap();
    page.amount("saved", "1.00");

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//table[1]//th[@scope='row']")).containsExactly("goods", "pays");
    assertThat(parsed.all("//table[1]//tr[@class='total']/td[@class='number']"))
        .containsExactly("15.00");
    assertThat(parsed.all("//table[2]//td")).containsExactly("1.00");
    assertThat(parsed.all("//table")).hasSize(2);
  }

  @Test
  void a_table_has_headings_for_its_columns_and_rows_and_numbers_at_the_right() {
    Page page = new HtmlPage();
    page.table(
        Table.of("", ">pieces", "note", "")
            .line("North")
            .row("Mouse", "5", "", "")
            .row("Rat", "12", "", ""));

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//thead/tr/*")).containsExactly("", "pieces", "note");
    assertThat(parsed.all("//thead/tr/th[@scope='col']")).containsExactly("pieces", "note");
    assertThat(parsed.all("//th[@scope='rowgroup'][@colspan='3']")).containsExactly("North");
    assertThat(parsed.all("//th[@scope='row']")).containsExactly("Mouse", "Rat");
    assertThat(parsed.all("//*[@class='number']")).containsExactly("pieces", "5", "12");
  }

  @Test
  void rows_that_begin_alike_stand_under_it_once() {
    Page page = new HtmlPage();
    page.table(
        Table.of("", "for").grouped().row("Mon", "Amber").row("Mon", "Birch").row("Tue", "Cob"));

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//tbody[1]//th")).containsExactly("Mon", "Amber", "Birch");
    assertThat(parsed.all("//tbody[2]//th")).containsExactly("Tue", "Cob");
    assertThat(parsed.all("//th[@scope='rowgroup']")).containsExactly("Mon", "Tue");
    assertThat(parsed.all("//thead/tr/*")).containsExactly("for");
  }

  /** CSS Fragmentation 3: break-before and break-after with the value page. */
  @Test
  void a_sheet_has_its_paper_to_itself_with_what_stands_at_its_foot() {
    Page page = new HtmlPage();
    page.heading("Letter");
    page.foot("Wash hands.");
    page.sheet("Sheet of ann");
    page.sheet("Sheet of bo");
    page.sign("Paid");
    page.heading("Rest");

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//section[@class='sheet']/h2"))
        .containsExactly("Sheet of ann", "Sheet of bo");
    assertThat(parsed.all("//section[@class='sheet']/p[@class='foot'][position()=last()]"))
        .containsExactly("Wash hands.", "Wash hands.");
    assertThat(parsed.all("//section[not(@class)]/h2")).containsExactly("Letter", "Rest");
    assertThat(parsed.all("//section[h2='Sheet of bo']/p[@class='sign']").get(0))
        .contains("Paid", "signature");
    assertThat(parsed.all("//style").get(0))
        .containsPattern(
            "@media print \\{[^@]*\\.sheet \\{ break-before: page; break-after: page;");
  }

  @Test
  void how_full_something_is_is_drawn_and_told() {
    Page page = new HtmlPage();
    page.table(Table.of("in", "Chest").bars("Jan", List.of(0.66)).bars("Feb", List.of(1.2)));

    ParsedPage parsed = parsed(page);
    assertThat(parsed.all("//i/@style")).containsExactly("width:66%", "width:100%");
    assertThat(parsed.all("//td")).containsExactly("\u00a066\u00a0%", "\u00a0120\u00a0%");
  }
}
