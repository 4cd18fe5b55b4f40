package io.frostlot.report;

/** How a page looks: one narrow column, hairlines, and paper of its own for each sheet. */
final class HtmlStyle {
  /** CSS, without signs that XML would take for markup. */
  static final String CSS =
      """
      :root { color-scheme: light; }
      body { margin: 0; background: #fff; color: #1b1b1b; font: 1rem/1.5 system-ui, sans-serif;
        overflow-wrap: break-word; }
      main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
      h1, h2, h3 { line-height: 1.25; break-after: avoid; }
      h1 { font-size: 1.6rem; margin: 0 0 .75rem; }
      h2 { font-size: 1.15rem; margin: 2.25rem 0 .75rem; padding-bottom: .25rem;
        border-bottom: 1px solid #767676; }
      h3 { font-size: 1rem; margin: 0 0 .25rem; }
      p, ul, dl { margin: .5rem 0; orphans: 3; widows: 3; }
      ul { padding-left: 1.25rem; }
      li { margin: .25rem 0; }
      .entry { margin: 1.25rem 0; }
      dl div { display: flex; flex-wrap: wrap; gap: 0 .5rem; margin: .25rem 0; }
      dt { color: #454545; }
      dd { margin: 0; flex: 1 1 16rem; }
      .facts dt { width: 3.5rem; font-weight: 600; color: inherit; }
      table { border-collapse: collapse; margin: .75rem 0; }
      .wide { overflow-x: auto; margin: .75rem 0; }
      .wide table { min-width: 100%; margin: 0; }
      th, td { padding: .25rem .5rem; text-align: left; vertical-align: baseline; font-weight: 400;
        border-bottom: 1px solid #d0d0d0; }
      th:first-child, td:first-child { padding-left: 0; }
      th:last-child, td:last-child { padding-right: 0; }
      thead th, thead td { vertical-align: bottom; font-size: .875rem; color: #454545;
        border-bottom-color: #767676; }
      .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      .under th { padding-left: 1rem; }
      .across th { padding-top: .75rem; font-weight: 600; }
      .across + tr th, tbody:has(.across) tr:not(.across) th { padding-left: 1rem; }
      .amounts { width: 100%; max-width: 36rem; }
      .total th, .total td { font-weight: 600; border-top: 1px solid #767676; }
      .bar { display: inline-block; width: 6rem; border: 1px solid #767676; vertical-align: -.1em; }
      .bar i { display: block; border-top: .7rem solid #5b7c99; }
      .sheet { margin: 2.5rem 0; padding: 0 1.25rem 1rem; border: 1px solid #767676; }
      .sheet h2 { margin-top: 1.25rem; }
      .sign { display: flex; flex-wrap: wrap; gap: 3rem 1.5rem; align-items: flex-end;
        margin: 3rem 0 1.5rem; break-inside: avoid; }
      .sign span { flex: 1 1 8rem; padding-top: .1rem; border-top: 1px solid #1b1b1b;
        font-size: .8rem; color: #454545; }
      .foot { font-size: .8rem; line-height: 1.4; color: #454545; border-top: 1px solid #d0d0d0;
        padding-top: .5rem; break-inside: avoid; }
      tr, li, dl div { break-inside: avoid; }
      @page { margin: 16mm 18mm; }
      @media print {
        body { font-size: 10pt; }
        main { max-width: none; padding: 0; }
        .wide { overflow: visible; }
        .entry { break-inside: avoid; }
        .sheet { break-before: page; break-after: page; margin: 0; padding: 0; border: 0; }
        .sheet h2 { margin-top: 0; }
      }
      """;

  private HtmlStyle() {}
}
