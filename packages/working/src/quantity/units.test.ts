import { expect, test } from 'vitest'
import { findUnit } from './units.ts'

/** Value of each name in the kind's own unit; null for an unknown name. One test, because a kind's units are built once. */
const names = {
  lengthM: { kilometre: 1000, centimeters: 0.01, millim: null, km: 1000 },
  areaMm2: { squaremm: 1, sqmm: 1, mmsq: 1, mm2: 1, squareft: 92903.04, cumm: null, cubicmm: null, mm3: null },
  volumeMm3: { cubicmm: 1, cumm: 1, mmcu: 1, cubiccentimetres: 1000, cuin: 16387.064, sqmm: null, squaremm: null, millilitres: 1000, millil: null },
  temperatureDifferenceK: { 'Δ°C': 1, ΔK: 1, 'Δ°F': 5 / 9, '°F': 5 / 9, mK: 0.001, millikelvin: 0.001 },
  temperatureC: { '°C': 1, 'Δ°C': null, ΔK: null },
  resistanceOhm: { milliohms: 0.001, milliohm: 0.001, mohm: 0.001, millimohm: null },
  currentA: { milliamps: 0.001, kiloampere: 1000, milliA: null },
  frequencyHz: { kilohertz: 1000, kHz: 1000, kiloHz: null },
  pressurePa: { kilopascals: 1000, kiloPa: null, 'kN/m2': 1000 },
  thermalResistanceKPerW: { 'kelvin/watt': 1, 'mK/W': 0.001, 'K/kW': 0.001 },
} as const

test('a unit goes by its symbol and its words, a prefix with letters by the symbol and spelt out by the words', () => {
  for (const [kind, own] of Object.entries(names)) {
    for (const [name, size] of Object.entries(own)) {
      const unit = findUnit(kind as keyof typeof names, name)
      if (size === null) expect(unit, name).toBeUndefined()
      else expect(unit && unit.times / unit.over / size, name).toBeCloseTo(1, 12)
    }
  }
  // Millikelvins start at absolute zero too.
  const milli = findUnit('temperatureC', 'mK')
  expect(milli && ((300_000 + milli.offset) * milli.times) / milli.over).toBeCloseTo(26.85, 9)
})
