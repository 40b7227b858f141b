/** One look on paper and on a screen: black on white in print, dark where the reader's screen is. */
export const STYLE = `
:root{color-scheme:light dark;--ink:#111;--paper:#fff;--soft:#555;--line:#999;--warm:#fff4dc}
@media screen and (prefers-color-scheme:dark){:root{--ink:#f2e9db;--paper:#1e1a16;--soft:#c3b8a8;--line:#7a7063;--warm:#3a2e1a}}
*{box-sizing:border-box}
body{margin:0 auto;padding:0 12px 40px;max-width:200mm;background:var(--paper);color:var(--ink);font:15px/1.4 Arial,Helvetica,"Liberation Sans",sans-serif;overflow-wrap:anywhere}
h1{font-size:1.5em;margin:.6em 0 .2em}h2{font-size:1.3em;margin:1.4em 0 .4em;border-bottom:2px solid var(--line)}h3{font-size:1em;margin:.7em 0 .1em}
h1 bdi{font-weight:normal}
p{margin:.3em 0}a{color:inherit}
nav ul,ol.cuts,ol.bins{list-style:none;margin:.4em 0;padding:0}
nav li{display:inline-flex;gap:.4em;align-items:center;margin:0 .9em .3em 0}nav a{display:inline-block;padding:.35em 0}
button,input{font:inherit}
button{padding:.45em .8em;border:1px solid var(--line);border-radius:4px;background:var(--paper);color:var(--ink)}
.caution{background:var(--warm);border-left:4px solid var(--ink);padding:.4em .7em}
.minor{color:var(--soft);font-size:.9em}.count{color:var(--soft);font-size:.9em;margin:0 0 0 1.9em}
.step{break-inside:avoid;border-top:1px solid var(--line);padding-bottom:.3em}
.ticks{margin:.1em 0 .2em 1.9em;display:flex;flex-wrap:wrap;gap:.1em .9em}.part{font-weight:bold}
.tick{display:inline-flex;gap:.5em;align-items:baseline;min-height:1.7em;cursor:pointer}
.tick input{transform:translateY(.18em)}[type=checkbox]{width:1.15em;height:1.15em;flex:none;margin:0;accent-color:#7a4d1e}
.tick:has(:checked)>span{color:var(--soft);text-decoration:line-through}
.size{font-size:1.1em;white-space:nowrap}
.cuts li,.bins li{break-inside:avoid;border-top:1px solid var(--line);padding:.15em 0}
.picture{overflow-x:auto;margin:.4em 0;break-inside:avoid}
.drawing{display:block;flex:none;max-width:none}
.sections{display:flex;flex-wrap:wrap;gap:0 1mm;align-items:flex-end}.sections .picture{margin:0}
.measures{display:grid;grid-template-columns:repeat(auto-fill,minmax(160px,1fr));gap:.5em;border:1px solid var(--line);padding:.6em;margin:.5em 0}
.measures p{grid-column:1/-1;margin:0}.measures label{display:flex;flex-direction:column;font-size:.9em}
.measures input{padding:.3em;border:1px solid var(--line);background:var(--paper);color:var(--ink);width:100%}
.measures [aria-invalid=true]{outline:2px solid #c4351c}
.labels{--width:60mm;--height:32mm;--across:3;--left:15mm;--top:15mm;--gapAcross:0mm;--gapDown:0mm;overflow-x:auto}
.label-sheet{display:grid;grid-template-columns:repeat(var(--across),var(--width));grid-auto-rows:var(--height);gap:var(--gapDown) var(--gapAcross);margin-bottom:4mm}
.label{display:flex;flex-direction:column;justify-content:center;overflow:hidden;padding:1mm 2mm;border:.2mm dotted var(--line);font-size:min(3.3mm,var(--height)/8);line-height:1.2;break-inside:avoid}
.label>*{flex:none;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}.label b{font-size:1.25em}
.drawings{display:flex;flex-wrap:wrap;gap:2mm 6mm;align-items:flex-start}
.drawer>div{display:flex;flex-direction:column;gap:4mm;max-width:100%}figure{margin:0;max-width:100%;break-inside:avoid}figcaption{font-weight:bold}
@page{margin:10mm}
@page labels{margin:0}
@media print{
:root{color-scheme:light;--soft:#333}
body{max-width:none;padding:0;font-size:10.5pt;background:none}
.screen,.unprinted,body:has(#set-ups.unprinted) header{display:none}
.page:not(main>:first-child){break-before:page}h2,h3,.caution{break-after:avoid}
.caution,.tick input{print-color-adjust:exact;-webkit-print-color-adjust:exact}.caution{background:none;border:1px solid #000;border-left-width:4px}
.picture{overflow:visible}
.drawings:not(.drawer){display:block;orphans:1;widows:1}.drawings>figure{display:inline-block;vertical-align:top;margin-right:6mm}
.drawer{column-gap:2mm}.drawer>figure{margin:0}
ol.cuts{columns:2;column-gap:6mm;font-size:9pt}
#set-ups{font-size:9.5pt}
.labels{overflow:visible;page:labels;break-before:page}
.label-sheet{padding:var(--top) 0 0 var(--left);margin:0;break-inside:avoid}.label-sheet+.label-sheet{break-before:page}
}
`;
