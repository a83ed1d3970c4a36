/**
 * The look of all pages of a report: a handbook's, for the screen by day and night and for paper. Nothing is told by
 * colour alone.
 */
export const pageStyle = `
:root { color-scheme: light dark;
  --page: #ffffff; --ink: #14212e; --muted: #4a5865; --rule: #d3dbe2; --tint: #f3f6f8; --link: #245681; --mark: #a83b0a; --on-mark: #ffffff;
  --z0: #e6eef5; --z1: #a9c3da; --z2: #6b93ba; --z3: #1d3557; --on-z: #14212e; --on-z3: #ffffff;
  --serif: "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, serif; --sans: ui-sans-serif, system-ui, sans-serif; }
@media (prefers-color-scheme: dark) { :root {
  --page: #10161c; --ink: #eef3f7; --muted: #aab7c3; --rule: #33404c; --tint: #18212a; --link: #9cc6ea; --mark: #ffb066; --on-mark: #10161c;
  --z0: #1f2d3a; --z1: #35506b; --z2: #6aa5d8; --z3: #d9e9f7; --on-z: #eef3f7; --on-z2: #10161c; --on-z3: #10161c; } }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 62rem; padding: 1.25rem 1.25rem 4rem; background: var(--page); color: var(--ink); font: 15px/1.5 var(--sans); overflow-wrap: break-word; }
a { color: var(--link); text-underline-offset: .15em; }
a:focus-visible, button:focus-visible, input:focus-visible, select:focus-visible { outline: 2px solid var(--link); outline-offset: 2px; }
nav { display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; font-size: .9rem; margin-bottom: 1.5rem; }
nav .to-next { margin-left: auto; }
header { border-top: 3px solid var(--ink); padding-top: .75rem; margin-bottom: 1.25rem; }
header .over { margin: 0; color: var(--muted); font-size: .9rem; }
h1 { font: 600 2rem/1.15 var(--serif); margin: .15rem 0 .25rem; }
h2 { font: 600 1.3rem/1.25 var(--serif); margin: 2.5rem 0 .75rem; padding-top: .5rem; border-top: 1px solid var(--ink); }
h3 { font: 600 .95rem/1.3 var(--sans); margin: 1rem 0 .35rem; }
p, ul, ol, dl, figure { margin: 0 0 .75rem; }
ul, ol { padding-left: 1.2rem; }
li { margin-bottom: .3rem; }
.subject { font-size: 1.05rem; margin: 0 0 .75rem; }
.standing { display: flex; flex-wrap: wrap; gap: .4rem .75rem; align-items: center; margin: 0; padding: 0; list-style: none; }
.standing li { margin: 0; }
.zone, .level { display: inline-block; font-weight: 600; line-height: 1.3; white-space: nowrap; }
.zone.long { white-space: normal; }
.zone { padding: .1rem .5rem; border-radius: 2px; background: var(--z0); color: var(--on-z); }
.zone.z1 { background: var(--z1); }
.zone.z2 { background: var(--z2); color: var(--on-z2, var(--on-z)); }
.zone.z3 { background: var(--z3); color: var(--on-z3); }
.level { font-size: .8rem; padding: .05rem .45rem; border: 1px solid currentColor; border-radius: 2px; }
.error .level, .level.error { background: var(--mark); border-color: var(--mark); color: var(--on-mark); }
.warning .level, .level.warning { color: var(--mark); }
.note .level, .level.note { color: var(--muted); }
.cautions { border-left: 3px solid var(--mark); background: var(--tint); padding: .6rem .9rem; margin: 1.25rem 0; font-size: .9rem; }
.cautions p { margin: 0 0 .3rem; }
.cautions p:last-child { margin: 0; }
.findings { list-style: none; padding: 0; }
.finding { border-bottom: 1px solid var(--rule); padding: .6rem 0 .5rem; margin: 0; }
.finding:first-child { padding-top: 0; }
.finding p { margin: 0 0 .2rem; max-width: 46rem; }
.finding .what { font-weight: 600; }
.finding .what .level { margin-right: .35rem; vertical-align: .05em; }
.lead, .aside { color: var(--muted); }
.aside { font-size: .9rem; }
.lead-line { font-size: 1.05rem; }
.cite { text-decoration: none; font-size: .8em; vertical-align: .25em; line-height: 1; }
.groups { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr)); gap: .25rem 2.5rem; }
.group h3 { margin-top: .25rem; }
.facts div { display: grid; grid-template-columns: 8.5rem 1fr; gap: .75rem; padding: .18rem 0; border-bottom: 1px solid var(--rule); }
.facts dt { color: var(--muted); }
.facts dd { margin: 0; min-width: 0; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; margin-bottom: .9rem; font-size: .92rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--muted); font-size: .9rem; padding-bottom: .3rem; }
th, td { text-align: left; vertical-align: top; padding: .35rem .9rem .35rem 0; border-bottom: 1px solid var(--rule); font-weight: 400; }
th:last-child, td:last-child { padding-right: 0; }
thead th { color: var(--muted); border-bottom-color: var(--ink); vertical-align: bottom; }
.short, .line { white-space: nowrap; }
.line { display: inline-block; }
td, tbody th { overflow-wrap: anywhere; }
figure svg { display: block; max-width: 100%; height: auto; }
.beside { display: grid; grid-template-columns: minmax(0, 400px) minmax(0, 1fr); gap: 1rem 2rem; align-items: start; margin-bottom: .75rem; }
.narrow { display: none; }
.sources { font-size: .9rem; }
.sources li { overflow-wrap: anywhere; }
footer { margin-top: 3rem; padding-top: .6rem; border-top: 1px solid var(--rule); color: var(--muted); font-size: .85rem; }
.count { margin: 0 0 .5rem; }
.tools { display: flex; flex-wrap: wrap; gap: .75rem 1.25rem; align-items: end; margin: 0 0 .9rem; padding: .75rem .9rem; background: var(--tint); }
.tools label { display: grid; gap: .15rem; font-size: .85rem; color: var(--muted); }
.tools input, .tools select, .tools button { font: inherit; font-size: .95rem; color: var(--ink); background: var(--page); border: 1px solid var(--muted); border-radius: 2px; padding: .3rem .5rem; min-height: 2.1rem; max-width: 100%; }
.tools input { width: 15rem; }
th button { all: unset; cursor: pointer; color: var(--link); text-decoration: underline dotted; text-underline-offset: .2em; }
th button:focus-visible { outline: 2px solid var(--link); outline-offset: 2px; }
th[aria-sort="ascending"] button::after { content: " ↑"; }
th[aria-sort="descending"] button::after { content: " ↓"; }
.index { max-width: 78rem; }
.index main > .cautions, .index .aside { max-width: 62rem; }
.machines th:first-child { width: 32%; }
.machines .said-first, .machines .line { display: block; }
.machines .tag { font-weight: 600; font-size: 1rem; }
.machines .said { display: block; color: var(--muted); }
.machines td .level { margin: 0 .25rem .15rem 0; }
[hidden] { display: none !important; }
@media screen and (max-width: 46rem) {
  body { padding: 1rem 1rem 3rem; }
  h1 { font-size: 1.6rem; }
  .beside { grid-template-columns: minmax(0, 1fr); }
  .wide { display: none; }
  .narrow { display: block; }
  .tools label { flex: 1 1 9rem; }
  .tools input, .tools select { width: 100%; }
  table, tbody, caption { display: block; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .machines thead { position: static; width: auto; height: auto; clip-path: none; display: block; margin-bottom: .5rem; }
  .machines thead tr { display: flex; flex-wrap: wrap; gap: .2rem 1rem; }
  .machines thead th { border: 0; padding: 0; width: auto; }
  tbody tr { display: grid; grid-template-columns: minmax(0, 1fr); padding: .5rem 0; border-bottom: 1px solid var(--rule); }
  tbody th, tbody td { border: 0; padding: .1rem 0; }
  .machines tbody th { width: auto; }
  tbody th { font-weight: 600; }
  tbody td:empty { display: none; }
  td[data-name]::before { content: attr(data-name) ": "; color: var(--muted); }
  .short { white-space: normal; }
  .machines .line { display: inline; }
}
@page { size: A4; margin: 16mm 16mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
@media print {
  :root { color-scheme: light; --page: #ffffff; --ink: #111111; --muted: #3d4852; --rule: #b8c0c8; --tint: #ffffff; --link: #111111; --mark: #8a2f06; --on-mark: #ffffff;
    --z0: #e6eef5; --z1: #a9c3da; --z2: #6b93ba; --z3: #1d3557; --on-z: #14212e; --on-z2: #14212e; --on-z3: #ffffff; }
  html { font-size: 9.5pt; }
  body, .index { max-width: none; padding: 0; font-size: 1rem; line-height: 1.4; }
  nav, .tools, th button::after { display: none; }
  h1 { font-size: 19pt; }
  h2 { font-size: 12.5pt; margin: 14pt 0 5pt; break-after: avoid; }
  th button { display: contents; text-decoration: none; color: inherit; }
  h3 { break-after: avoid; }
  a { text-decoration: none; }
  .zone, .level { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .cautions { border: 1px solid var(--ink); }
  .finding, .facts div, table.whole, tr, figure, .sources li, .cautions { break-inside: avoid; }
  thead { display: table-header-group; break-inside: avoid; break-after: avoid; }
  .beside { grid-template-columns: 92mm minmax(0, 1fr); gap: 6mm; }
}
`;
