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
      h1 { font-size: 1.6rem; margin: 0 0 .75rem; text-wrap: balance; }
      h2 { font-size: 1.15rem; margin: 2.25rem 0 .75rem; padding-bottom: .25rem;
        border-bottom: 1px solid #767676; }
      h3 { font-size: 1rem; margin: 0 0 .25rem; }
      p, ul, dl { margin: .5rem 0; orphans: 3; widows: 3; }
      ul { padding-left: 1.25rem; }
      li { margin: 0 0 .25rem; }
      .entry { margin: 1.25rem 0; }
      .facts div { display: flex; margin: .25rem 0; }
      .facts dt { flex: 0 0 4.5rem; font-weight: 600; }
      .facts dd { margin: 0; }
      .details div { margin: .25rem 0; padding-left: 1rem; text-indent: -1rem; }
      .details dt, .details dd { display: inline; margin: 0; }
      .details dt { color: #454545; }
      table { border-collapse: collapse; width: 100%; margin: .75rem 0; }
      .wide { overflow-x: auto; margin: .75rem 0; background:
        linear-gradient(to left, #fff 2rem, transparent) local right / 4rem 100% no-repeat,
        linear-gradient(to left, #b8b8b8, transparent) right / .75rem 100% no-repeat; }
      .wide table { margin: 0; }
      th, td { padding: .25rem .5rem; text-align: left; vertical-align: baseline; font-weight: 400;
        border-bottom: 1px solid #d0d0d0; }
      tr :first-child { padding-left: 0; }
      tr :last-child { padding-right: 0; }
      .under :first-child { padding-left: 1rem; }
      .across { break-after: avoid; }
      .across th { padding-top: .75rem; font-weight: 600; }
      thead th, thead td { vertical-align: bottom; font-size: .875em; color: #454545;
        border-bottom-color: #767676; }
      .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      .number + :not(.number) { padding-left: 1rem; }
      .total th, .total td { font-weight: 600; border-top: 1px solid #767676; }
      .total:first-child th, .total:first-child td { border-top: 0; }
      .bar { display: inline-block; width: 6rem; border: 1px solid #767676; vertical-align: -.1em; }
      .bar i { display: block; border-top: .7rem solid #5b7c99; }
      .sheet { margin: 2.5rem 0; padding: 0 1.25rem .5rem; border: 1px solid #767676; }
      .sheet h2 { margin-top: 1.25rem; }
      .sheet ul { columns: 18rem; column-gap: 2rem; }
      .sign { display: flex; flex-wrap: wrap; gap: .75rem 1.5rem; margin: 2.5rem 0 1.5rem; }
      .sign span { flex: 1 1 8rem; margin-top: 1.3rem; padding-top: .1rem; font-size: .8rem;
        border-top: 1px solid #1b1b1b; color: #454545; }
      .foot { padding-top: .5rem; border-top: 1px solid #d0d0d0; font-size: .8rem;
        line-height: 1.4; color: #454545; }
      tr, li, dl div, .amounts, .whole, .sign, .foot { break-inside: avoid; }
      .sign, .foot { break-before: avoid; }
      h2 + p, h3 + p { break-inside: avoid; break-after: avoid; }
      @page { margin: 16mm 18mm; }
      @media (max-width: 32rem) {
        main { padding: 1rem .75rem 2rem; }
        h1 { font-size: 1.35rem; }
        .sheet { padding: 0 .75rem .5rem; }
        .wide { font-size: .8125rem; }
        .wide th, .wide td { padding-right: .3rem; }
        .bar { width: 3rem; }
      }
      @media print {
        :root { font-size: 10pt; }
        body { line-height: 1.4; }
        main { max-width: none; padding: 0; }
        th, td { padding: .15rem .5rem; }
        h2 { margin-top: 1.5rem; }
        .wide { overflow: visible; background: none; }
        .entry { margin: .75rem 0; break-inside: avoid; }
        .sign { margin: 1.75rem 0 1rem; }
        .sheet { break-before: page; break-after: page; margin: 0; padding: 0; border: 0; }
        .sheet h2, .sheet + section h2 { margin-top: 0; }
      }
      """;

  private HtmlStyle() {}
}
