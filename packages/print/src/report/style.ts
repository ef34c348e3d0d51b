/** The report's look: on screen a sheet of paper on a quiet ground, printed nothing but ink. */
export const reportStyle = `
:root { color-scheme: light dark; --sheet: #fff; --ghost: #b4552d; --ink: #1d2330; --soft: #5b6472; --line: #d9d5cc; --ground: #efece5; --paper: #fffefb; --accent: #2f5d62; --fault: #a3261d; --warning: #8a5a00; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #e9e6df; --soft: #aab2bf; --line: #3b4150; --ground: #14171d; --paper: #1d212a; --accent: #8ec3c9; --fault: #ff9c8f; --warning: #f0c26a; --sheet: #262b36; --ghost: #f0a67c; }
}
* { box-sizing: border-box; }
html { background: var(--ground); color: var(--ink); font: 16px/1.5 "Source Sans 3", "Source Sans Pro", "Segoe UI", system-ui, sans-serif; -webkit-text-size-adjust: 100%; }
body { margin: 0; }
main { max-width: 62rem; margin: 2rem auto; padding: 3rem 3.5rem 3.5rem; background: var(--paper); border: 1px solid var(--line); border-radius: 3px; box-shadow: 0 2px 18px rgb(40 35 20 / 8%); }
header { border-bottom: 3px solid var(--ink); padding-bottom: 1rem; margin-bottom: 1.5rem; }
h1 { font-size: 2.5rem; line-height: 1.1; margin: 0 0 .4rem; letter-spacing: -.01em; overflow-wrap: anywhere; }
.facts { color: var(--soft); margin: 0; }
.verdict { margin: 1rem 0 0; font-size: 1.15rem; font-weight: 600; }
.verdict.fault { color: var(--fault); } .verdict.warning { color: var(--warning); } .verdict.sound { color: var(--accent); }
nav { font-size: .92rem; margin: 0 0 1.5rem; display: flex; flex-wrap: wrap; gap: .2rem 1.1rem; }
nav a { color: var(--accent); text-decoration: none; border-bottom: 1px solid var(--line); }
section { margin: 2.4rem 0 0; }
h2 { font-size: 1.35rem; margin: 0 0 .6rem; padding-bottom: .25rem; border-bottom: 1px solid var(--ink); }
h3 { font-size: 1rem; margin: 1.2rem 0 .5rem; color: var(--soft); font-weight: 600; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; margin: .4rem 0 1rem; }
th { text-align: left; font-weight: 500; font-size: .85rem; color: var(--soft); border-bottom: 1px solid var(--line); }
td { border-bottom: 1px solid var(--line); overflow-wrap: anywhere; }
th, td { padding: .28rem .8rem .28rem 0; vertical-align: top; }
th:last-child, td:last-child { padding-right: 0; }
tbody th { font-size: 1rem; font-weight: 600; color: inherit; }
caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.scroll { overflow-x: auto; position: relative; } .scroll:focus-visible, a:focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
tr.same td, tr.same th { border-bottom-color: transparent; }
.right { text-align: right; white-space: nowrap; }
ol.steps { padding-left: 2rem; margin: .4rem 0; } ol.steps li { margin: .3rem 0; padding-left: .3rem; } ol.steps li::marker { font-weight: 700; color: var(--accent); }
.detail { color: var(--soft); font-size: .92rem; }
ul.findings, ul.cautions { list-style: none; padding: 0; margin: .4rem 0; }
ul.findings li { margin: .55rem 0; padding: .15rem 0 .15rem 1.7rem; position: relative; border-left: 0; }
ul.findings li::before { position: absolute; left: 0; top: .1rem; content: "–"; color: var(--soft); }
ul.findings li.fault::before { content: "▲"; color: var(--fault); } ul.findings li.warning::before { content: "△"; color: var(--warning); }
ul.findings b { font-weight: 600; } li.fault b { color: var(--fault); } li.warning b { color: var(--warning); } li.note b { color: var(--soft); }
ul.cautions li { margin: .35rem 0; padding-left: 1.7rem; position: relative; } ul.cautions li::before { content: "–"; position: absolute; left: 0; }
svg.named { display: block; max-width: 100%; height: auto; border-radius: 4px; }
.pieces { display: flex; flex-wrap: wrap; align-items: flex-end; gap: 1.2rem 1.6rem; }
figure { margin: 0; break-inside: avoid; max-width: 100%; } figure svg { display: block; max-width: 100%; height: auto; overflow: visible; }
figcaption { font-size: .85rem; color: var(--soft); text-align: center; margin-top: .3rem; max-width: 18rem; overflow-wrap: anywhere; }
svg path { fill: none; stroke: var(--ink); vector-effect: non-scaling-stroke; stroke-linejoin: round; }
svg .cut { stroke-width: 1.5px; fill: var(--sheet); } svg .stitch { stroke-width: .8px; stroke-dasharray: 4 2.4; } svg .line { stroke-width: .6px; stroke-dasharray: 7 2 1.5 2; stroke: var(--soft); }
svg .grain { stroke-width: 1px; } svg .fold { stroke: var(--ink); stroke-dasharray: 9 2 2 2; stroke-width: 2px; }
svg .laid-on { stroke: var(--line); stroke-width: 1px; }
svg .ghost { stroke: var(--ghost); stroke-width: 1px; stroke-dasharray: 1 3; stroke-linecap: round; }
.key { font-size: .85rem; color: var(--soft); }
footer { margin-top: 2.5rem; border-top: 1px solid var(--line); padding-top: .8rem; color: var(--soft); font-size: .85rem; }
@media (max-width: 46rem) {
  main { margin: 0; padding: 1.1rem; border: 0; border-radius: 0; } h1 { font-size: 1.7rem; } section { margin-top: 1.8rem; }
  nav { gap: .5rem 1.1rem; } nav a { padding: .2rem 0; } table { font-size: .92rem; } td { overflow-wrap: normal; } th, td { padding-right: .6rem; }
  ol.steps { padding-left: 1.6rem; } .pieces { gap: .9rem; }
}
@media print {
  :root { color-scheme: light; --ink: #1d2330; --soft: #444b58; --line: #bbb; --paper: #fff; --accent: #2f5d62; --fault: #a3261d; --warning: #8a5a00; --sheet: #fff; --ghost: #b4552d; }
  .scroll { overflow: visible; }
  @page { margin: 15mm; }
  html { background: none; font-size: 10.5pt; } main { margin: 0; padding: 0; border: 0; box-shadow: none; max-width: none; background: none; }
  nav { display: none; } h2, h3 { break-after: avoid; } tr, li { break-inside: avoid; } thead { display: table-header-group; }
  .pieces { zoom: .72; } th, td { padding-top: .15rem; padding-bottom: .15rem; } section { margin-top: 1.6rem; } table.short { break-inside: avoid; }
}
`;
