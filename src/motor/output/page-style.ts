/** Style of the page: paper and ink, a title block as on a drawing, rules instead of boxes. */
export const pageStyle = `
:root { color-scheme: light dark; --paper: #fbf9f5; --raised: #f3efe7; --ink: #26323d; --quiet: #5d6671; --line: #d9d3c7;
  --accent: #a84a26; --pass: #2f6244; --marginal: #8a5a00; --fail: #b3261e; --link: #0b6f7c; }
@media screen and (prefers-color-scheme: dark) {
  :root { --paper: #171b21; --raised: #1f252d; --ink: #e8e4da; --quiet: #a3adb8; --line: #38414c;
    --accent: #e58a63; --pass: #7cc295; --marginal: #e0b45c; --fail: #ff8f85; --link: #5cc9d6;
    --plot-ink: #e8e4da; --plot-quiet: #a3adb8; --plot-line: #323b46; --plot-first: #e58a63; --plot-second: #4fbecb;
    --plot-third: #b79be0; --plot-fail: #ff8f85; --plot-pass: #7cc295; }
}
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; scroll-padding-top: 1rem; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 16px/1.5 'Source Sans 3', 'DejaVu Sans', system-ui, sans-serif; font-variant-numeric: tabular-nums lining-nums; }
.sheet { max-width: 54rem; margin: 0 auto; padding: 1.5rem 1.25rem 3rem; }
a { color: var(--link); text-underline-offset: .18em; }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.skip { position: absolute; left: -100vw; } .skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .3rem .6rem; z-index: 1; }
header { border: 2px solid var(--ink); }
.name { padding: .9rem 1.1rem 1rem; }
.kind { margin: 0; color: var(--quiet); font-size: .875rem; }
h1 { margin: 0; font-size: clamp(1.6rem, 5.5vw, 2.4rem); line-height: 1.15; font-weight: 650; letter-spacing: -.01em; overflow-wrap: anywhere; }
.headline { margin: .5rem 0 0; max-width: 44rem; font-size: 1.0625rem; }
.headline.fail { color: var(--fail); } .headline.marginal { color: var(--marginal); }
.key { display: flex; flex-wrap: wrap; margin: 0; border-top: 2px solid var(--ink); overflow: hidden; }
.key div { flex: 1 1 30%; padding: .55rem 1.1rem .65rem; box-shadow: 0 0 0 .5px var(--line); }
.key dt { color: var(--quiet); font-size: .8125rem; line-height: 1.35; } .key dd { margin: 0; font-size: 1.25rem; font-weight: 600; line-height: 1.35; } .key dd.sentence { font-size: .9375rem; font-weight: 400; }
nav { margin: 1rem 0 0; font-size: .9375rem; } nav ul { display: flex; flex-wrap: wrap; gap: .1rem 1.1rem; list-style: none; margin: 0; padding: 0; } nav a { display: inline-block; padding: .25rem 0; }
section { margin-top: 2.4rem; } h2 { margin: 0 0 .5rem; font-size: 1.375rem; font-weight: 650; line-height: 1.25; border-bottom: 1px solid var(--ink); padding-bottom: .25rem; }
p { margin: .5rem 0; max-width: 44rem; }
table { width: 100%; border-collapse: collapse; margin: 1rem 0; font-size: .9375rem; line-height: 1.4; }
caption { text-align: left; font-weight: 600; padding: 0 0 .25rem; }
th, td { text-align: left; vertical-align: top; padding: .35rem .75rem .35rem 0; border-bottom: 1px solid var(--line); overflow-wrap: break-word; }
thead th { color: var(--quiet); font-weight: 500; font-size: .8125rem; border-bottom-color: var(--quiet); vertical-align: bottom; }
tbody th { font-weight: 500; } .n { text-align: right; padding-right: 0; padding-left: .75rem; } td.n { white-space: nowrap; } .n + td:not(.n), .n + th:not(.n) { padding-left: 1rem; } table.facts { max-width: 32rem; } table:not(.facts, .stack) td { width: 1%; white-space: nowrap; } #sources table:not(.stack) th:first-child { width: 4.5rem; } #sources table:not(.stack) td { width: auto; white-space: normal; } #sources .stack td:last-child { white-space: nowrap; }
.fail { color: var(--fail); font-weight: 600; } .marginal { color: var(--marginal); font-weight: 600; } .pass { color: var(--pass); }
#glance td:nth-child(2) { white-space: nowrap; } figure { margin: 1.2rem 0; break-inside: avoid; } figure svg { display: block; width: 100%; height: auto; } .narrow { display: none; }
figcaption { color: var(--quiet); font-size: .875rem; margin-top: .3rem; max-width: 44rem; }
ul.cautions { list-style: none; padding: 0; margin: 1rem 0; } ul.cautions li { border-left: 4px solid var(--marginal); background: var(--raised); padding: .45rem .8rem; margin: .35rem 0; font-size: .9375rem; }
ul.remarks { padding-left: 1.1rem; color: var(--quiet); font-size: .875rem; } li { overflow-wrap: break-word; }
.before { border: 2px solid var(--ink); padding: 0 1.1rem .6rem; } .before h2 { border: 0; padding-top: .8rem; } .before ul { padding-left: 1.2rem; margin: 0; } .before li { margin: .35rem 0; }
footer { margin-top: 1.5rem; color: var(--quiet); font-size: .8125rem; }
@media screen and (max-width: 40rem) {
  tbody th { overflow-wrap: anywhere; }
  .sheet { padding: 1rem 1rem 2rem; } .wide { display: none; } .narrow { display: block; }
  .key div { flex-basis: 45%; padding: .4rem .8rem .45rem; } .key dd:not(.sentence) { font-size: 1.125rem; }
  table.stack, .stack caption, .stack tbody, .stack tr, .stack th, .stack td { display: block; } .stack thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .stack tbody tr { display: flex; flex-wrap: wrap; column-gap: 1.5rem; border-bottom: 1px solid var(--line); padding: .45rem 0; } .stack th, .stack td { border: 0; padding: .05rem 0; }
  .stack tr .n + td:not(.n) { padding-left: 0; } .stack tbody th { flex: 1 1 100%; font-weight: 600; padding-bottom: .1rem; }
  .stack td { flex: 1 1 auto; min-width: calc(50% - .75rem); display: flex; justify-content: space-between; gap: 1rem; text-align: right; white-space: normal; }
  table.stack td.unknown { display: none; } #glance tbody th { flex: 1 1 50%; } #glance td { min-width: 0; } #glance td:nth-child(2) { flex: 0 0 auto; } #glance td:nth-child(3) { flex: 1 1 100%; text-align: left; color: var(--quiet); } #glance .stack td::before { content: none; } .stack td::before { content: attr(data-label); color: var(--quiet); text-align: left; font-weight: 400; flex: none; }
}
@media print {
  @page { margin: 13mm 14mm; } :root { --paper: #fff; --raised: #fff; } html { font-size: 8.75pt; } body { font-size: 1rem; line-height: 1.4; } .sheet { max-width: none; padding: 0; } nav, .skip { display: none; }
  a { color: inherit; text-decoration: none; } section { margin-top: 1.4rem; } h1 { font-size: 20pt; }
  table { margin: .6rem 0; } th, td { padding-block: .16rem; } section > p { break-inside: avoid; } ul.cautions li { border-left-width: 2pt; padding: .1rem .6rem; margin: .2rem 0; font-size: .9rem; } #sources table { font-size: .8rem; } thead { display: table-header-group; } table:not(:has(tbody tr:nth-child(9))) { break-inside: avoid; } tr, li { break-inside: avoid; } h2, caption, section > p { break-after: avoid; } .before { break-inside: avoid; }
  figure { max-width: 115mm; margin: .5rem 0; } figure.to-scale { max-width: none; } figure.to-scale svg { width: 180mm; max-width: 100%; } .name { padding: .5rem .9rem .6rem; } .headline { max-width: none; margin-top: .3rem; } .key div { padding: .25rem .9rem .3rem; } .paired { display: grid; grid-template-columns: 100mm 1fr; column-gap: 7mm; align-items: start; break-inside: avoid; } header, .before { border-width: 1.2pt; }
}`;
