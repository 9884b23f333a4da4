import { faultsOf } from './faults.ts'
import { figures } from './figures.ts'
import { table } from './table.ts'

const all = await figures()
const faults = faultsOf(all)
process.stdout.write(`${[table(all), ...faults].join('\n')}\n`)
process.exitCode = faults.length === 0 ? 0 : 1
