import { faultsOf, uncheckedFaults } from './faults.ts'
import { figures } from './figures.ts'
import { models } from './models.ts'
import { table } from './table.ts'
import { unchecked } from './unchecked.ts'

const all = await figures()
const known = models()
const faults = [...faultsOf(all), ...uncheckedFaults(all, known, unchecked)]
const summary = `${known.length} models with an equation, ${Object.keys(unchecked).length} of them without a figure from outside (references/count/unchecked.ts)`
process.stdout.write(`${[table(all), '', summary, ...faults].join('\n')}\n`)
process.exitCode = faults.length === 0 ? 0 : 1
