/** How pages look, on screens light and dark and on paper. Colour never tells anything alone. */

const LIGHT = `
  --paper: #fbfaf7; --ink: #1f2328; --soft: #59606a; --rule: #d5d2c9; --card: #f1efe8;
  --met: #0a5a8c; --missed: #a33b00; --open: #5d4a86; --none: #59606a; --band: #cfe3ee; --lost: #e9dccf;
`;

const DARK = `
  --paper: #17191c; --ink: #e8e6e1; --soft: #aab0b8; --rule: #3b4047; --card: #212429;
  --met: #7cc4ef; --missed: #ffa56b; --open: #c3b1ee; --none: #aab0b8; --band: #1f3f52; --lost: #463527;
`;

/** Editors that show a page name their kind of theme on its body. */
export const STYLE = `
:root { color-scheme: light dark; }
:root, .vscode-light { ${LIGHT} }
@media (prefers-color-scheme: dark) { :root { ${DARK} } }
.vscode-dark { ${DARK} }
.vscode-high-contrast { ${DARK} --paper: #000; --card: #000; --ink: #fff; --rule: #fff; --soft: #fff; --none: #fff; }
.vscode-high-contrast-light { ${LIGHT} --paper: #fff; --card: #fff; --ink: #000; --rule: #000; --soft: #000; --none: #000; }
@media (prefers-contrast: more) {
  :root { --soft: var(--ink); --rule: var(--ink); --none: var(--ink); }
}
@media (forced-colors: active) {
  :root, body {
    --paper: Canvas; --ink: CanvasText; --soft: CanvasText; --rule: CanvasText; --card: Canvas;
    --met: LinkText; --missed: CanvasText; --open: CanvasText; --none: CanvasText; --band: Highlight; --lost: GrayText;
  }
  .grid { stroke-opacity: .4; } .band { fill-opacity: .4; } .lost { fill-opacity: .3; }
}
* { box-sizing: border-box; }
body {
  margin: 0 auto; max-width: 60rem; padding: 1.5rem 1rem 3rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.45 system-ui, sans-serif; overflow-wrap: anywhere;
}
h1, h2, h3, h4, p, dl, ul, ol, figure, table { margin: 0; }
h1 { font-size: 1.7rem; line-height: 1.2; }
h2 { font-size: 1.2rem; margin-top: 1.6rem; padding-top: .5rem; border-top: 2px solid var(--ink); }
h3 { font-size: 1.05rem; margin-top: 1.1rem; }
h4 { font-size: 1rem; font-weight: 600; }
p + p, ul, ol { margin-top: .4rem; }
ul, ol { padding-left: 1.3rem; }
.soft, figcaption, .place { color: var(--soft); }
.place { font-size: .85em; }
.verdict { font-weight: 700; white-space: nowrap; }
.met { color: var(--met); } .missed, .error, .warning { color: var(--missed); }
.undecided { color: var(--open); } .not-measured { color: var(--none); }
.short { margin-top: .8rem; padding: .8rem 1rem; background: var(--card); border-left: .4rem solid var(--ink); }
.short h2 { margin: 0; padding: 0; border: 0; }
.short h3 { margin-top: .7rem; }
.care { margin-top: .9rem; padding: .5rem .8rem; border: 2px solid var(--missed); }
.goal { display: flow-root; margin-top: .7rem; padding-top: .5rem; border-top: 1px solid var(--rule); }
.intro { display: flow-root; }
.goal .goal { margin-left: 1rem; }
dl { display: grid; grid-template-columns: minmax(4.5rem, max-content) 1fr; column-gap: .7rem; font-size: .9rem; }
dt { color: var(--soft); } dd { margin: 0; min-width: 0; }
figure { font-size: .8rem; break-inside: avoid; }
.goal > figure, .intro > figure { float: right; width: 20.5rem; max-width: 100%; margin-left: 1rem; }
.row { display: flex; flex-wrap: wrap; gap: .6rem 1rem; margin-top: .5rem; }
.row figure { width: 25rem; max-width: 100%; } .row figure.square { width: 14.5rem; }
svg { display: block; max-width: 100%; height: auto; font: 10px system-ui, sans-serif; }
svg text { fill: var(--ink); } svg .tick, svg .name { fill: var(--soft); } svg .title { font-weight: 600; font-size: 11px; }
.grid { stroke: var(--rule); stroke-width: .7; } .zero { stroke: var(--soft); stroke-width: 1; }
.band { fill: var(--band); } .lost { fill: var(--lost); }
.hit { fill: var(--met); } .miss { stroke: var(--missed); stroke-width: 1.6; fill: none; }
.shot { fill: none; stroke: var(--met); stroke-width: 1.3; }
.need { stroke: var(--ink); stroke-dasharray: 4 3; } .run { fill: none; stroke: var(--met); stroke-width: 2; }
.single { stroke: var(--soft); stroke-width: .8; } .range { fill: none; stroke: var(--met); stroke-width: 2; } .mean { fill: var(--met); }
.ellipse { fill: none; stroke: var(--open); stroke-width: 1.4; stroke-dasharray: 5 2; } .centre { stroke: var(--open); stroke-width: 1.6; }
.landed { fill: var(--met); } .standard { stroke: var(--open); } .way { stroke: var(--soft); } .pattern { stroke: var(--met); } .pattern.standard { stroke: var(--open); }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; margin-top: .4rem; font-size: .88rem; overflow-wrap: normal; }
caption { text-align: left; color: var(--soft); padding-bottom: .3rem; }
th, td { text-align: left; vertical-align: top; padding: .2rem .5rem .2rem 0; border-top: 1px solid var(--rule); }
.box { display: inline-block; width: .95em; height: .95em; margin: 0 .22em .1em 0; border: 1.3px solid var(--ink); vertical-align: middle; }
.group { display: inline-block; margin-right: .55em; }
.ticks { list-style: none; padding-left: 0; } .ticks .ticks { padding-left: 1.3rem; }
.blank { display: inline-block; width: 9rem; border-bottom: 1px solid var(--ink); }
.line { height: 1.6em; border-bottom: 1px solid var(--rule); }
.on-card { break-inside: avoid; }
@media print {
  :root, body {
    color-scheme: light;
    --paper: #fff; --ink: #000; --soft: #444; --rule: #bbb; --card: #f3f3f3;
    --met: #0a5a8c; --missed: #8f3300; --open: #4d3a76; --none: #444; --band: #d7e7f0; --lost: #e9dccf;
  }
  @page { size: A4; margin: 8mm 9mm; }
  body { max-width: none; padding: 0; font-size: 7.6pt; line-height: 1.2; }
  h1 { font-size: 14pt; } h2 { font-size: 10.5pt; margin-top: 5pt; padding-top: 1pt; } h3 { font-size: 9pt; margin-top: 4pt; } h4 { font-size: 7.6pt; }
  .place { font-size: .68em; } h2, h3, h4 { break-after: avoid; break-inside: avoid; }
  .short { padding: 4pt 6pt; margin-top: 4pt; } .care { margin-top: 4pt; padding: 3pt 5pt; }
  .goal { margin-top: 1.5pt; padding-top: 1.5pt; } dl, table { font-size: 6.9pt; } figure { font-size: 6pt; line-height: 1.1; }
  p + p, ul, ol { margin-top: 1pt; } dl { grid-template-columns: 32pt 1fr; column-gap: 4pt; }
  .short ul, .blocks { columns: 2; column-gap: 12pt; } .rest { columns: 3; column-gap: 10pt; } .short h3 { margin-top: 3pt; }
  .rest section { break-inside: avoid; } .rest h2 { margin-top: 0; border-top-width: 1px; } .rest dl, .rest ul { font-size: 6.9pt; } .goal .goal { margin-left: 5pt; }
  .goal > figure, .intro > figure { float: none; width: auto; margin: 0; display: grid; grid-template-columns: 150pt 1fr; column-gap: 4pt; align-items: end; } .flights { display: flex; flex-wrap: wrap; gap: 4pt 8pt; margin-top: 2pt; }
  .row { display: contents; } .row figure { width: 164pt; } .row figure.square { width: 94pt; } .row .square + .square { order: 1; width: 82pt; }
  .goal > figure.square { grid-template-columns: 98pt 1fr; }
  th, td { padding: 0 4pt 0 0; line-height: 1.12; } .key { font-size: 6.5pt; } tr { break-inside: avoid; }
  article + article { break-before: page; }
  .card { font-size: 9.5pt; line-height: 1.35; } .card h1 { font-size: 16pt; } .card h2 { font-size: 12pt; } .card h3, .card dl { font-size: 9.5pt; }
  .card dl { grid-template-columns: 50pt 1fr; } .card .care { font-size: 8.5pt; } .card p + p, .card ul { margin-top: 3pt; }
}
`;
