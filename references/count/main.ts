import { figures } from './figures.ts'
import { table } from './table.ts'

process.stdout.write(`${table(await figures())}\n`)
