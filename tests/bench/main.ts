import { cpus } from 'node:os'
import { audits } from './audits.ts'
import { closedForm } from './closedForm.ts'
import { heatBalance } from './heatBalance.ts'
import { heating } from './heating.ts'
import { keyStroke } from './keyStroke.ts'
import { planning } from './planning.ts'
import { type Figure, keeps, table } from './report.ts'
import { sizes } from './sizes.ts'

const parts: Readonly<Record<string, () => readonly Figure[] | Promise<readonly Figure[]>>> = {
  'closed forms': closedForm,
  'heat balance': heatBalance,
  heating,
  planning,
  'key stroke': keyStroke,
  audits,
  sizes,
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((name) => !Object.hasOwn(parts, name))
if (unknown.length > 0) throw new Error(`no part is called "${unknown.join('", "')}"; there are: ${Object.keys(parts).join(', ')}`)

process.stdout.write(
  `Node ${process.versions.node}, ${cpus().length} cores, ${cpus()[0]?.model ?? 'unknown'}. Ratios hold in one run; times are this machine's.\n`,
)
let missed = 0
for (const [name, part] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue
  const figures = await part()
  missed += figures.filter((figure) => !keeps(figure)).length
  process.stdout.write(`\n${table(name, figures)}`)
}
process.stdout.write(`\n${missed === 0 ? 'every limit was kept' : `${missed} limits were missed`}\n`)
process.exitCode = missed === 0 ? 0 : 1
