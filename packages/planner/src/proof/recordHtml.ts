import { type RecordTable, recordPage } from './recordLines.ts'

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Outside text escaped for the page; control and direction characters become spaces. */
const escaped = (text: string): string =>
  String(text)
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/[&<>"']/g, (character) => entities[character] as string)

/** One A4 or letter sheet, black on white, without external resources. */
const style = `
@page { size: auto; margin: 10mm }
body { font: 10pt/1.35 system-ui, sans-serif; color: #1c2022; background: #fff; margin: 0 auto; max-width: 185mm; padding: 4mm }
h1 { font-size: 15pt; margin: 0 0 1mm } h2 { font-size: 11pt; margin: 4mm 0 1mm; break-after: avoid }
.says { font-weight: 600; border: 0.4mm solid; padding: 1.5mm 2.5mm; margin: 2mm 0 }
dl { display: grid; grid-template-columns: max-content 1fr max-content 1fr; gap: 0.5mm 4mm; margin: 2mm 0 } dt { color: #55616a } dd { margin: 0; overflow-wrap: anywhere }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums } th, td { text-align: left; padding: 0.6mm 2mm 0.6mm 0; border-bottom: 0.2mm solid #c9c3b6; vertical-align: top } td:first-child { overflow-wrap: anywhere } tr { break-inside: avoid }
ul { margin: 0; padding-left: 5mm } .sources { font-size: 8pt; color: #55616a }
.sign { display: grid; grid-template-columns: 2fr 1fr 2fr; gap: 6mm; margin-top: 12mm; break-inside: avoid } .sign p { border-top: 0.3mm solid; margin: 0; padding-top: 1mm }
@media print { body { font-size: 8.5pt; line-height: 1.25; padding: 0 } h1 { font-size: 13pt } h2 { font-size: 9.5pt; margin-top: 2.5mm } .sources { font-size: 7pt } th, td { padding-block: 0.4mm } .sign { margin-top: 9mm } }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm }
@media (max-width: 40rem) { .pair { display: block } dl { grid-template-columns: max-content 1fr } .sign { gap: 3mm } }
`

function table({ title, head, rows }: RecordTable): string {
  const cells = (tag: 'th' | 'td', values: readonly string[]) =>
    `<tr>${values.map((value) => `<${tag}${tag === 'th' ? ' scope="col"' : ''}>${escaped(value)}</${tag}>`).join('')}</tr>`
  return `<h2>${escaped(title)}</h2>\n<table><thead>${cells('th', head)}</thead><tbody>\n${rows.map((row) => cells('td', row)).join('\n')}\n</tbody></table>`
}

const list = (lines: readonly string[], of = ''): string => `<ul${of}>${lines.map((line) => `<li>${escaped(line)}</li>`).join('')}</ul>`

/**
 * The record of a repair as found and as left: one self-contained page to print and sign.
 *
 * @throws JobError where the record is not one that verifyRepair wrote
 * @example
 * recordHtml(verifyRepair(bilgePumpFeed, { date: '2026-05-04', readings: [] }).record) // "<!doctype html>…"
 */
export function recordHtml(record: Readonly<Record<string, unknown>>): string {
  const page = recordPage(record)
  const about = page.about.filter(([, value]) => value !== '').map(([name, value]) => `<dt>${escaped(name)}</dt><dd>${escaped(value)}</dd>`)
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Repair record: ${escaped(page.title)}</title>
<style>${style}</style>
</head>
<body>
<main>
<h1>Repair record: ${escaped(page.title)}</h1>
<p class="says">${escaped(page.says)}</p>
<dl>${about.join('')}</dl>
<div class="pair">${page.readings.map((one) => `<section>${table(one)}</section>`).join('\n')}</div>
${page.tables.map(table).join('\n')}
<h2>Look again</h2>
${list(page.lookAgain)}
<h2>Rules and tables</h2>
${list(page.sources, ' class="sources"')}
<div class="sign"><p>Made and read by</p><p>Date</p><p>Signature</p></div>
</main>
</body>
</html>
`
}
