import { describe, expect, test } from 'vitest'
import { awgTable, faaAc4313, iec60228, iso6722, saeJ1128 } from '../tables/index.ts'
import { awgToAreaMm2, awgToDiameterMm } from './awg.ts'
import { circularMilsToMm2, mm2ToCircularMils } from './circularMils.ts'
import { layFactorOfClass } from './layFactor.ts'
import { resistanceOhmPerM } from './resistance.ts'

const copper = (areaMm2: number, layFactor = 1) => resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20, layFactor })

describe('rows against the formulas that should reproduce them', () => {
  test('AWG: sizes are the exact series within half their last digit', () => {
    for (const { gauge, diameterMm, areaMm2, circularMils } of awgTable.rows) {
      expect(Math.abs(awgToDiameterMm(gauge) - diameterMm)).toBeLessThanOrEqual(6e-5)
      expect(Math.abs(awgToAreaMm2(gauge) - areaMm2)).toBeLessThanOrEqual(6e-5)
      expect(Math.abs(mm2ToCircularMils(awgToAreaMm2(gauge)) - circularMils)).toBeLessThanOrEqual(6e-3)
    }
  })

  test('AWG: resistances are 1.7241e-8 ohm m over the exact area within 0.05 %', () => {
    for (const { gauge, resistanceOhmPer1000Ft } of awgTable.rows)
      expect(Math.abs((copper(awgToAreaMm2(gauge)) * 304.8) / resistanceOhmPer1000Ft - 1)).toBeLessThan(5e-4)
  })

  test('IEC 60228: what the resistance implies is 85 to 101 % of the nominal area, the lay of the class counted', () => {
    for (const { areaMm2, conductorClass, plainOhmPerKm } of iec60228.rows) {
      const impliedMm2 = (copper(1, layFactorOfClass(conductorClass).nominal) * 1000) / plainOhmPerKm
      expect(impliedMm2 / areaMm2, `${areaMm2} mm2, class ${conductorClass}`).toBeGreaterThan(0.85)
      expect(impliedMm2 / areaMm2, `${areaMm2} mm2, class ${conductorClass}`).toBeLessThan(1.01)
    }
  })

  test('ISO 6722-1: what the resistance implies is 90 to 98 % of the nominal area without lay', () => {
    for (const { areaMm2, plainOhmPerKm } of iso6722.rows) {
      const impliedMm2 = (copper(1) * 1000) / plainOhmPerKm
      expect(impliedMm2 / areaMm2, `${areaMm2} mm2`).toBeGreaterThan(0.9)
      expect(impliedMm2 / areaMm2, `${areaMm2} mm2`).toBeLessThan(0.98)
    }
  })

  test('SAE J1128: mm2 are the circular mils, within half the last digit', () => {
    for (const { minimumCircularMils, minimumAreaMm2 } of saeJ1128.rows)
      expect(Math.abs(circularMilsToMm2(minimumCircularMils) - minimumAreaMm2)).toBeLessThanOrEqual(5.1e-4)
  })

  test('aircraft wire strays from the gauge it is named after by -10 to +18 % of area', () => {
    const shares = faaAc4313.wires.map(({ gauge, circularMils }) => circularMilsToMm2(circularMils) / awgToAreaMm2(gauge))
    expect(Math.min(...shares)).toBeGreaterThan(0.895)
    expect(Math.max(...shares)).toBeLessThan(1.195)
  })
})
