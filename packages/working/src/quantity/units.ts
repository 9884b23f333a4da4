import {
  angleRows,
  areaRows,
  currentRows,
  forceRows,
  frequencyRows,
  lengthRows,
  massRows,
  powerRows,
  prefixes,
  pressureRows,
  ratioRows,
  resistanceRows,
  speedRows,
  temperatureRows,
  timeRows,
  type UnitRow,
  voltageRows,
  volumeRows,
} from './factors.ts'
import type { QuantityKind } from './kinds.ts'

/** A unit: value in the kind's own unit = (number + offset) x times/over. */
export interface Unit {
  readonly times: number
  readonly over: number
  readonly offset: number
  /** Set if the factor is a power of ten: the decimal point moves and nothing is rounded. */
  readonly power?: number
  /** Its one-letter prefix, whose case counts. */
  readonly letter?: string
}

interface Source {
  readonly rows: readonly UnitRow[]
  /** Scale from the rows' unit to the kind's own, as times/over. */
  readonly scale?: readonly [number, number]
  /** Lengths to this power are units as well: 2 for areas, 3 for volumes. */
  readonly power?: 2 | 3
  /** Kinds whose quotient is a unit as well, and the scale of that quotient. */
  readonly quotient?: readonly [QuantityKind, QuantityKind, number]
  readonly dropOffset?: boolean
}

const sources: Readonly<Record<QuantityKind, Source>> = {
  areaMm2: { rows: areaRows, power: 2 },
  lengthM: { rows: lengthRows },
  lengthMm: { rows: lengthRows, scale: [1000, 1] },
  temperatureC: { rows: temperatureRows },
  temperatureDifferenceK: { rows: temperatureRows, dropOffset: true },
  resistanceOhm: { rows: resistanceRows },
  resistanceOhmPerM: { rows: [], quotient: ['resistanceOhm', 'lengthM', 1] },
  currentA: { rows: currentRows },
  voltageV: { rows: voltageRows },
  powerW: { rows: powerRows },
  forceN: { rows: forceRows },
  massKg: { rows: massRows },
  timeS: { rows: timeRows },
  ratio: { rows: ratioRows },
  angleRad: { rows: angleRows },
  pressurePa: { rows: pressureRows, quotient: ['forceN', 'areaMm2', 1e6] },
  speedMPerS: { rows: speedRows, quotient: ['lengthM', 'timeS', 1] },
  volumeMm3: { rows: volumeRows, power: 3 },
  stressMPa: { rows: pressureRows, scale: [1, 1e6], quotient: ['forceN', 'areaMm2', 1] },
  thermalResistanceKPerW: { rows: [], quotient: ['temperatureDifferenceK', 'powerW', 1] },
  frequencyHz: { rows: frequencyRows },
}

/** Millimetres in a metre: squares and cubes of lengths come out in mm2 and mm3. */
const mmPerM = 1000

function unitOf(times: number, over: number, offset = 0): Unit {
  const power = Math.round(Math.log10(times / over))
  const exact = offset === 0 && (power < 0 ? times * 10 ** -power === over : over * 10 ** power === times)
  return exact ? { times, over, offset, power } : { times, over, offset }
}

/** Cache: units by kind, built on first use. */
const built = new Map<QuantityKind, ReadonlyMap<string, Unit>>()

/** The units of a kind by name, without quotients. */
export function unitsOf(kind: QuantityKind): ReadonlyMap<string, Unit> {
  const known = built.get(kind)
  if (known !== undefined) return known
  const { rows, scale = [1, 1], power, dropOffset } = sources[kind]
  const units = new Map<string, Unit>()
  for (const row of rows) addRow(units, row, scale, dropOffset === true)
  if (power !== undefined) addPowers(units, power)
  built.set(kind, units)
  return units
}

function addRow(
  units: Map<string, Unit>,
  [names, times, over, letters = '', offset = 0]: UnitRow,
  scale: readonly [number, number],
  dropOffset: boolean,
): void {
  const unit = unitOf(times * scale[0], over * scale[1], dropOffset ? 0 : offset)
  const [symbol = '', ...words] = names.split(' ')
  for (const name of [symbol, ...words]) {
    units.set(name, unit)
    if (dropOffset) units.set(`Δ${name}`, unit)
  }
  for (const letter of letters) {
    const [prefix, exponent] = prefixes[letter] ?? ['', 0]
    const larger = exponent > 0 ? 10 ** exponent : 1
    const smaller = exponent < 0 ? 10 ** -exponent : 1
    const scaled = unitOf(unit.times * larger, unit.over * smaller, unit.offset * (smaller / larger))
    units.set(letter + symbol, { ...scaled, letter })
    for (const word of [symbol, ...words]) if (word.length > 2) units.set(prefix + word, scaled)
  }
}

function addPowers(units: Map<string, Unit>, power: 2 | 3): void {
  const words = power === 2 ? ['sq', 'square'] : ['cu', 'cubic']
  for (const [name, { times, over }] of unitsOf('lengthM')) {
    const unit = unitOf((times * mmPerM) ** power, over ** power)
    for (const written of [name + power, words[0] + name, words[1] + name, name + words[0]]) units.set(written, unit)
  }
}

/** A unit's name in the table's spelling: no spaces, "^", full stops or hyphens inside words; "per" and a negative power become "/". */
export function unitName(written: string): string {
  return written
    .replace(/^(.+)[ *.]([a-z]+)\^?-([123])$/i, (_, above, below, power) => `${above}/${below}${power === '1' ? '' : power}`)
    .replace(/\bper\b(?! (?:cent|mille))/i, '/')
    .replace(/(?<=[a-z])-(?=[a-z])/gi, '')
    .replace(/[ ^.]/g, '')
}

/** The unit of that name, including quotients of two units; undefined if unknown. */
export function findUnit(kind: QuantityKind, name: string): Unit | undefined {
  const unit = unitsOf(kind).get(name)
  const quotient = sources[kind].quotient
  if (unit !== undefined || quotient === undefined) return unit
  const slash = name.indexOf('/')
  if (slash <= 0) return undefined
  const [above, below, scale] = quotient
  const numerator = unitsOf(above).get(name.slice(0, slash))
  const under = name.slice(slash + 1)
  const count = /^1(?:,000|0*)(?=\D)/.exec(under)?.[0] ?? ''
  const denominator = unitsOf(below).get(under.slice(count.length))
  if (numerator === undefined || denominator === undefined) return undefined
  const many = count === '' ? 1 : Number(count.replace(',', ''))
  return unitOf(numerator.times * denominator.over * scale, numerator.over * denominator.times * many)
}

/** Names of a kind that differ only in case. A prefix never changes from M to m; from m to M only if the whole name is in small letters, as "mhz" but not "mHz". */
export function namesInOtherCase(kind: QuantityKind, name: string): readonly string[] {
  const quotient = sources[kind].quotient
  const slash = name.indexOf('/')
  if (quotient !== undefined && slash > 0) {
    const above = bothCases(quotient[0], name.slice(0, slash))
    const below = bothCases(quotient[1], name.slice(slash + 1))
    return above.flatMap((first) => below.map((second) => `${first}/${second}`))
  }
  return bothCases(kind, name)
}

function bothCases(kind: QuantityKind, name: string): readonly string[] {
  const units = unitsOf(kind)
  if (units.has(name)) return [name]
  const small = name.toLowerCase()
  const found = new Map<number, string>()
  for (const [other, unit] of units) {
    if (other.toLowerCase() !== small) continue
    const otherPrefix = unit.letter?.toLowerCase() === 'm' && other[0] !== name[0]
    if (otherPrefix && name !== small) continue
    const size = unit.times / unit.over
    if (!found.has(size)) found.set(size, other)
  }
  return [...found.values()]
}
