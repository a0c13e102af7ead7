/** The page's whole look: one column that fits a phone, print on A4, dark where the device asks for it. */
export const PAGE_STYLE = `
:root{color-scheme:light dark}
*{box-sizing:border-box}
body{margin:0 auto;padding:16px;max-width:72ch;font:1rem/1.5 "Atkinson Hyperlegible Next","Liberation Sans",sans-serif;overflow-wrap:anywhere;background:#fbfaf5;color:#15120e}
h1,h2,h3,p,ol,ul,dl,dd{margin:0}
h1{font-size:2.5rem;line-height:1.1}
h2{font-size:1.75rem;line-height:1.15}
h3{margin-top:24px;font-size:1.25rem;line-height:1.3}
header>*+*{margin-top:12px}
a{color:#0c5b4f;font-weight:600}
nav{margin:24px 0;border-block:1px solid}
nav ol,section ul{padding:0;list-style:none}
nav a,section li a{display:block;padding:12px 0}
section{padding:24px 0;border-top:4px solid}
dl>div{padding:8px 0;border-bottom:1px solid #d9d3c4}
dt{font-weight:700}
dd{white-space:pre-line}
table{width:100%;border-collapse:collapse}
th,td{padding:8px 0;border-bottom:1px solid #d9d3c4;text-align:start;vertical-align:top}
th{width:60%;padding-inline-end:16px;font-weight:400}
thead th{font-weight:700}
td{font-weight:700;white-space:pre-line}
@media (min-width:600px){dl>div{display:grid;grid-template-columns:14ch 1fr;gap:16px}}
@media (prefers-color-scheme:dark){body{background:#14130f;color:#efeae0}a{color:#6fc7b5}dl>div,th,td{border-color:#3d392f}}
@page{margin:15mm}
@media print{body{max-width:none;padding:0;background:none;color:#000;font-size:10pt}nav{display:none}section{break-before:page;border-top:0}tr,dl>div{break-inside:avoid}a{color:inherit}}
`;
