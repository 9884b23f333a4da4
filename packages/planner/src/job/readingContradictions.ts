import type { AddIssue } from './jobError.ts'
import type { JobReading, RepairJob } from './repairJob.ts'

/** A meter shows more than the supply where a charger or a coil adds to it; past three times it, another range or unit was read. A limit of ours. */
const farBeyond = 3
/** A supply of millivolts leaves room for what the leads pick up. */
const leastMostV = 1

/** What a value may be at all, by the kind of the reading. */
const ranges: Readonly<Partial<Record<JobReading['kind'], { readonly low: number; readonly high: number; readonly unit: string }>>> = {
  current: { low: -100_000, high: 100_000, unit: 'A' },
  temperature: { low: -100, high: 1300, unit: '°C' },
}

/** Read on a dead circuit: the meter drives its own current. */
const dead: ReadonlySet<JobReading['kind']> = new Set(['resistance', 'four-wire', 'insulation'])
/** Taken at one place: a clamp or a thermometer. */
const atOnePlace: ReadonlySet<JobReading['kind']> = new Set(['current', 'temperature'])

/** Readings that nobody could take, and values that no such reading has. */
export function readingContradictions({ circuit, readings = [] }: RepairJob, add: AddIssue): void {
  for (const [index, reading] of readings.entries()) {
    const path = `readings.${index}`
    if (reading.from === reading.to && !atOnePlace.has(reading.kind)) {
      const other = reading.from === 'joint-out' ? 'joint-in' : 'joint-out'
      add(`${path}.to`, reading.to, 'another place than from', `"to": "${other}"`)
    }
    if (reading.kind === 'drop' && reading.load !== 'on') add(`${path}.load`, reading.load, 'on: a drop is read with the load on', '"load": "on"')
    if (dead.has(reading.kind) && reading.load === 'on') add(`${path}.load`, reading.load, 'off or unplugged: ohms are read on a dead circuit', '"load": "off"')
    valueContradictions(reading, `${path}.value`, circuit.supplyV, add)
  }
}

function valueContradictions({ kind, value }: JobReading, path: string, supplyV: number, add: AddIssue): void {
  const range = ranges[kind]
  if (range !== undefined) {
    if (value < range.low || value > range.high) add(path, value, `from ${range.low} to ${range.high} ${range.unit}`, `"value": ${kind === 'current' ? 4 : 60}`)
    return
  }
  if (dead.has(kind)) {
    if (value < 0)
      add(path, value, 'at least 0 Ω: a minus sign means that current still flows there, or that the meter was nulled on more than its leads', '"value": 0.3')
    return
  }
  const mostV = Math.max(leastMostV, farBeyond * supplyV)
  if (Math.abs(value) > mostV)
    add(
      path,
      value,
      `at most ${mostV} V either way: more than ${farBeyond} times the supply of ${supplyV} V is another range or unit than the one noted`,
      `"value": ${supplyV}`,
    )
}
