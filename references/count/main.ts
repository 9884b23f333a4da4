import { faultsOf, uncheckedFaults } from './faults.ts'
import { changeShare, figures } from './figures.ts'
import { models } from './models.ts'
import { table } from './table.ts'
import { unchecked } from './unchecked.ts'

const all = await figures()
const known = models()
const faults = [...faultsOf(all), ...uncheckedFaults(all, known, unchecked)]
const summary = `${known.length} models with an equation, ${Object.keys(unchecked).length} of them without a figure from outside (references/count/unchecked.ts)`
const published = all.filter(({ status, looksUp }) => status === 'published' && !looksUp)
const sharp = published.filter(({ checks }) => checks.length > 0)
const sharpness = `${published.length} published figures; ${sharp.length} of them break at a change of ${100 * changeShare} % in one function, the others at one beyond their argued tolerance`
process.stdout.write(`${[table(all), '', summary, sharpness, ...faults].join('\n')}\n`)
process.exitCode = faults.length === 0 ? 0 : 1
