// How the sheet looks. No sign here may mean something to HTML: none of < > & and no quotes.
#pragma once

namespace paper {

// A page keeps margins alone, so that A4 (210 x 297 mm) and US Letter (216 x 279 mm) both fit.
inline constexpr const char* sheet_style = R"(
@page { margin: 13mm 16mm; }
* { box-sizing: border-box; }
html { background: #ffffff; color: #18262e; }
body { width: 178mm; margin: 9mm auto; font: 9pt/1.38 B612, DejaVu Sans, Verdana, sans-serif;
  overflow-wrap: anywhere; font-variant-numeric: tabular-nums;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
@media print { body { margin: 0 auto; } }
header { display: flex; gap: 4mm; align-items: center; border-bottom: 0.5mm solid #18262e;
  padding-bottom: 3mm; }
header svg { flex: none; }
header div { flex: 1; min-width: 0; }
h1 { font-size: 21pt; line-height: 1.15; margin: 0 0 0.6mm; }
h1.long { font-size: 13pt; }
h1.endless { font-size: 7pt; font-weight: normal; }
h2 { font-size: 9pt; margin: 0 0 1.2mm; }
p { margin: 0; }
.when { text-align: right; flex: 0 1 auto; color: #4a5861; }
.quiet, th { color: #4a5861; font-weight: normal; }
.figures { display: flex; gap: 3mm; margin: 3.2mm 0; }
.figures div { flex: 1; border: 0.25mm solid #b9b6ad; border-radius: 1.2mm; padding: 1.5mm 2.6mm; }
.figures div:first-child { flex: 1.5; border-color: #18262e; }
.figures b { display: block; font-size: 15pt; line-height: 1.25; white-space: nowrap; }
.figures div:last-child { flex: 1.35; }
.figures span { font-size: 7.6pt; color: #4a5861; }
.two { display: flex; gap: 8mm; }
.two section { flex: 1; }
.two section:first-child { flex: 1.6; }
.sheet { break-after: page; }
.sheet:last-child { break-after: auto; }
section { margin-bottom: 3.2mm; }
table { width: 100%; border-collapse: collapse; }
th, td { text-align: left; padding: 0.55mm 0; vertical-align: baseline;
  border-bottom: 0.2mm solid #d8d5cc; }
th { font-size: 7.6pt; padding-top: 0; }
td + td, th + th { padding-left: 3mm; }
.day { width: 34mm; white-space: nowrap; }
.number { text-align: right; white-space: nowrap; }
tr, .figures, header, svg { break-inside: avoid; }
h2 { break-after: avoid; }
.trail svg { display: block; font-family: B612, DejaVu Sans, Verdana, sans-serif; }
.rest { columns: 2; column-gap: 8mm; font-size: 7.6pt; }
.photos { display: flex; gap: 3mm; break-inside: avoid; }
.photos p { flex: 0 1 41mm; }
.photos img { display: block; width: 100%; height: 31mm; object-fit: cover;
  border: 0.25mm solid #18262e; image-orientation: from-image; }
.broken { border: 0.4mm solid #18262e; border-radius: 1.2mm; padding: 1.8mm 2.6mm; }
.care { border-left: 1.6mm solid #fbc959; padding-left: 3mm; break-inside: avoid; }
ul { margin: 0; padding: 0; list-style: none; }
.care ul { columns: 2; column-gap: 6mm; font-size: 7.8pt; }
.care li { break-inside: avoid; padding-bottom: 0.4mm; }
footer { color: #4a5861; font-size: 7.2pt; border-top: 0.2mm solid #d8d5cc; padding-top: 1mm; }
)";

}
