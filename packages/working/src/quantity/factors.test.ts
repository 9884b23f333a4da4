import { circularMilsToMm2 } from '@strandwise/core/conductor'
import { all, create, type Unit as MathUnit } from 'mathjs'
import { describe, expect, test } from 'vitest'
import {
  angleRows,
  areaRows,
  currentRows,
  doubtful,
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
import { parseQuantity } from './parseQuantity.ts'
import { findUnit, unitName } from './units.ts'

const math = create(all ?? {}, { number: 'number' })

/** Each row's symbol as mathjs knows it, or built from what it knows: a general library as an independent witness of every factor. */
const witnesses: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  m: { m: 'm', MM: 'mm', micron: 'um', in: 'inch', ft: 'foot', kft: '1000 foot', yd: 'yard', mi: 'mile', mil: 'mil' },
  mm2: { cmil: `${Math.PI / 4} mil^2`, kcmil: `${1000 * (Math.PI / 4)} mil^2` },
  mm3: { l: 'litre', L: 'litre', cc: 'cm^3', USfloz: '1/128 (231 in^3)', UKfloz: '4546.09/160 cm^3', USgal: '231 in^3', UKgal: '4546.09 cm^3' },
  ohm: { ohm: 'ohm', ohms: 'ohm', R: 'ohm', kilohm: 'kohm', megohm: 'megaohm', microhm: 'uohm' },
  A: { A: 'A', ADC: 'A' },
  V: { V: 'V', VDC: 'V' },
  W: { W: 'W', mechanicalhp: '550 foot lbf / s', metrichp: '75 kgf m / s' },
  N: { N: 'N', lbf: 'lbf', ozf: '1/16 lbf', kgf: 'kgf', gf: '0.001 kgf' },
  kg: { g: 'g', t: 'tonne', lb: 'lbm', oz: 'oz', shortton: '2000 lbm', longton: '2240 lbm' },
  s: { s: 's', min: 'minute', h: 'hour', d: 'day', week: 'week' },
  rad: { rad: 'rad', '°': 'deg', "'": 'arcmin', '"': 'arcsec', gon: 'grad', turn: 'cycle' },
  Pa: { Pa: 'Pa', bar: 'bar', psi: 'psi', ksi: '1000 psi', atm: 'atm', torr: 'torr', mmHg: 'mmHg', inHg: '25.4 mmHg' },
  'm/s': { mph: 'mile/hour', kph: 'km/hour', kn: '1852 m/hour', fpm: 'foot/minute', fps: 'foot/s', mps: 'm/s' },
  Hz: { Hz: 'Hz', rpm: '1/minute' },
}
const tables: readonly (readonly [string, readonly UnitRow[]])[] = [
  ['m', lengthRows],
  ['mm2', areaRows],
  ['mm3', volumeRows],
  ['ohm', resistanceRows],
  ['A', currentRows],
  ['V', voltageRows],
  ['W', powerRows],
  ['N', forceRows],
  ['kg', massRows],
  ['s', timeRows],
  ['rad', angleRows],
  ['Pa', pressureRows],
  ['m/s', speedRows],
  ['Hz', frequencyRows],
]

/** Half of the last digit of those factors that mathjs holds rounded: 133.322 Pa for mmHg and torr, 4.4482216152605 N for lbf and what is made of it. */
const rounded: Readonly<Record<string, number>> = { mmHg: 4e-6, inHg: 4e-6, torr: 4e-6, psi: 1e-10, ksi: 1e-10 }

describe.each(tables)('factors to %s against mathjs', (own, rows) => {
  test.each(rows.map(([names, times, over]) => [names.split(' ')[0] ?? '', times / over] as const))('%s', (symbol, factor) => {
    const witness = witnesses[own]?.[symbol]
    expect(witness, `no witness for "${symbol}"`).toBeDefined()
    const value = own === 'Hz' ? perSecond(witness ?? '') : (math.evaluate(`(${witness}) to ${own}`) as MathUnit).toNumber(own)
    expect(Math.abs(value / factor - 1)).toBeLessThan(rounded[symbol] ?? 1e-14)
  })
})

function perSecond(witness: string): number {
  return witness === 'Hz' ? 1 : 1 / (math.evaluate('minute to s') as MathUnit).toNumber('s')
}

test('temperatures against mathjs, differences as slopes', () => {
  const names: Readonly<Record<string, string>> = { '°C': 'degC', K: 'K', '°F': 'degF', '°R': 'degR' }
  for (const [row, times, over] of temperatureRows) {
    const symbol = row.split(' ')[0] ?? ''
    for (const at of [300, 500.5]) {
      const wanted = math.unit(at, names[symbol] ?? '').toNumber('degC')
      expect(parseQuantity(`${at} ${symbol}`, 'temperatureC')).toBeCloseTo(wanted, 10)
    }
    const slope = math.unit(500, names[symbol] ?? '').toNumber('degC') - math.unit(499, names[symbol] ?? '').toNumber('degC')
    expect(parseQuantity(`1 ${symbol}`, 'temperatureDifferenceK')).toBeCloseTo(slope, 10)
    expect(times / over).toBeCloseTo(slope, 10)
  }
})

test('prefixes against mathjs, on every unit that takes them', () => {
  for (const [letter, [word, power]] of Object.entries(prefixes)) {
    expect(10 ** power).toBeCloseTo((math.evaluate(`1 ${word === 'micro' ? 'u' : letter}m to m`) as MathUnit).toNumber('m'), 15)
  }
  for (const [own, rows] of tables) {
    for (const [names, times, over, letters = ''] of rows) {
      for (const letter of letters) {
        const kind = kindOf[own]
        const unit = kind && findUnit(kind, `${letter}${names.split(' ')[0]}`)
        expect(unit && unit.times / unit.over / ((times / over) * 10 ** (prefixes[letter]?.[1] ?? 0)), `${letter} ${names}`).toBeCloseTo(1, 14)
      }
    }
  }
})

const kindOf: Readonly<Record<string, QuantityKind>> = {
  m: 'lengthM',
  mm2: 'areaMm2',
  mm3: 'volumeMm3',
  ohm: 'resistanceOhm',
  A: 'currentA',
  V: 'voltageV',
  W: 'powerW',
  N: 'forceN',
  kg: 'massKg',
  s: 'timeS',
  rad: 'angleRad',
  Pa: 'pressurePa',
  'm/s': 'speedMPerS',
  Hz: 'frequencyHz',
}

test.each([
  ['0.3 in^2', 'areaMm2', '0.3 in^2', 'mm^2'],
  ['0.3 cm³', 'volumeMm3', '0.3 cm^3', 'mm^3'],
  ['3 cu ft', 'volumeMm3', '3 ft^3', 'mm^3'],
  ['7 mohm/ft', 'resistanceOhmPerM', '7 mohm/ft', 'ohm/m'],
  ['7 ohm/kft', 'resistanceOhmPerM', '7 ohm/(1000 ft)', 'ohm/m'],
  ['7 yd/min', 'speedMPerS', '7 yard/minute', 'm/s'],
  ['7 lbf/in²', 'pressurePa', '7 lbf/in^2', 'Pa'],
  ['7 kgf/cm²', 'stressMPa', '7 kgf/cm^2', 'MPa'],
  ['7 mK/W', 'thermalResistanceKPerW', '7 mK/W', 'K/W'],
] as const)('"%s" as %s against mathjs', (text, kind, expression, unit) => {
  const wanted = (math.evaluate(expression) as MathUnit).toNumber(unit)
  expect(Math.abs(parseQuantity(text, kind) / wanted - 1)).toBeLessThan(1e-12)
})

test('the circular mil is that of the conductor room; shares are shares', () => {
  expect(parseQuantity('1 cmil', 'areaMm2')).toBeCloseTo(circularMilsToMm2(1), 18)
  for (const [names, times, over] of ratioRows) expect({ '%': 0.01, '‰': 0.001, ppm: 1e-6 }[names.split(' ')[0] ?? '']).toBe(times / over)
})

test('every name of two units has two units, of different size', () => {
  for (const [name, [first, second]] of doubtful) {
    const kind = name.split(' ')[0] as QuantityKind
    const read = [first, second].map((unit) => findUnit(kind, unitName(unit.replace('²', '2'))))
    expect(read[0] && read[1] && read[0].times / read[0].over !== read[1].times / read[1].over, name).toBe(true)
    expect(findUnit(kind, name.split(' ')[1] ?? ''), name).toBeUndefined()
  }
})
