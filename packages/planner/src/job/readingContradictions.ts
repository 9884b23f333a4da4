import type { AddIssue } from './jobError.ts'
import type { JobReading, RepairJob } from './repairJob.ts'

/** A charger or a coil can raise a reading above the supply; beyond three times, another range or unit was read. A limit of ours. */
const farBeyond = 3
/** Least upper limit, as leads pick up noise that exceeds a millivolt supply. */
const leastMostV = 1

/** Possible values by kind of reading. */
const ranges: Readonly<Partial<Record<JobReading['kind'], { readonly low: number; readonly high: number; readonly unit: string }>>> = {
  current: { low: -100_000, high: 100_000, unit: 'A' },
  temperature: { low: -100, high: 1300, unit: '°C' },
}

/** Readings of a dead circuit, in which the meter drives its own current. */
const dead: ReadonlySet<JobReading['kind']> = new Set(['resistance', 'four-wire', 'insulation'])
/** Readings at a single place: clamp and thermometer. */
const atOnePlace: ReadonlySet<JobReading['kind']> = new Set(['current', 'temperature'])

/** Impossible readings, and values outside their kind's range. */
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
