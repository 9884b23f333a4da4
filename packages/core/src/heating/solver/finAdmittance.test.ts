import { describe, expect, test } from 'vitest'
import { finConductanceWPerK } from '../../heat/index.ts'
import { wire } from '../heatModel.sample.ts'
import { finAdmittance } from './finAdmittance.ts'

const kA = 391e-6
const copper = { conductivityWPerMK: 391, areaMm2: 1 }

describe('the steady fin', () => {
  test('one zone is the endless fin of the textbooks', () => {
    const { admittanceWPerK, offsetW, edgeSlope, edgeOffsetK } = finAdmittance({ ...wire, stubM: 0 }, true)
    expect(admittanceWPerK).toBeCloseTo(finConductanceWPerK({ ...copper, lossWPerMK: 0.1 }), 12)
    expect([offsetW, edgeSlope, edgeOffsetK]).toEqual([0, 1, 0])
  })

  test('two zones: the closed form of a stub before an endless fin', () => {
    const Kb = Math.sqrt(kA * 0.06)
    const Yi = Math.sqrt(kA * 0.1)
    const t = Math.tanh(Math.sqrt(0.06 / kA) * 0.006)
    const { admittanceWPerK, edgeSlope } = finAdmittance(wire, true)
    expect(admittanceWPerK).toBeCloseTo((Kb * (Kb * t + Yi)) / (Kb + Yi * t), 12)
    expect(edgeSlope).toBeCloseTo(1 / (Math.cosh(Math.sqrt(0.06 / kA) * 0.006) * (1 + (Yi * t) / Kb)), 12)
  })

  test('a stub without loss is a plain bar', () => {
    const Yi = Math.sqrt(kA * 0.1)
    const { admittanceWPerK, edgeSlope } = finAdmittance({ ...wire, bareLossWPerMK: 0 }, true)
    expect(admittanceWPerK).toBeCloseTo(1 / (0.006 / kA + 1 / Yi), 12)
    expect(edgeSlope).toBeCloseTo(1 / (1 + (Yi * 0.006) / kA), 12)
  })

  test('a wire without any loss takes nothing and is warm all along', () => {
    expect(finAdmittance({ ...wire, bareLossWPerMK: 0, insulatedLossWPerMK: 0 }, true)).toEqual({
      admittanceWPerK: 0,
      offsetW: 0,
      edgeSlope: 1,
      edgeOffsetK: 0,
    })
  })

  test('a clip without resistance holds its place; beyond it nothing is felt', () => {
    const { admittanceWPerK, offsetW, edgeSlope, edgeOffsetK } = finAdmittance({ ...wire, clip: { atM: 0.004, resistanceKPerW: 0, riseK: 7 } }, true)
    expect(admittanceWPerK).toBeCloseTo(finConductanceWPerK({ ...copper, lossWPerMK: 0.06, lengthMm: 4, end: 'held' }), 12)
    const gl = Math.sqrt(0.06 / kA) * 0.004
    expect(offsetW).toBeCloseTo((7 * Math.sqrt(kA * 0.06)) / Math.sinh(gl), 12)
    expect(edgeSlope).toBe(0)
    const beyond = finAdmittance({ ...wire, stubM: 0.002 }, true)
    expect(edgeOffsetK).toBeCloseTo(7 * beyond.edgeSlope, 9)
  })

  test('held behind a stub without loss: a plain bar between two temperatures', () => {
    const clip = { atM: 0.004, resistanceKPerW: 0, riseK: 7 }
    const { admittanceWPerK, offsetW } = finAdmittance({ ...wire, bareLossWPerMK: 0, clip }, true)
    expect(admittanceWPerK).toBeCloseTo(kA / 0.004, 12)
    expect(offsetW).toBeCloseTo((7 * kA) / 0.004, 12)
  })

  test('a clip with resistance is a branch', () => {
    const free = finAdmittance({ ...wire, stubM: 0 }, true)
    const near = finAdmittance({ ...wire, stubM: 0, clip: { atM: 1e-9, resistanceKPerW: 8, riseK: 3 } }, true)
    expect(near.admittanceWPerK).toBeCloseTo(free.admittanceWPerK + 1 / 8, 6)
    expect(near.offsetW).toBeCloseTo(3 / 8, 6)
  })

  const swept = { toM: 0.01, bareLossWPerMK: 0.7, insulatedLossWPerMK: 0.5, riseK: 300 }
  test('in the stream all along it comes to the stream', () => {
    const all = finAdmittance({ ...wire, swept: { ...swept, toM: 3 } }, true)
    expect(all.offsetW / all.admittanceWPerK).toBeCloseTo(300, 6)
    expect(all.edgeOffsetK + all.edgeSlope * 300).toBeCloseTo(300, 6)
  })

  test('flow and edge of a swept wire against even slices', () => {
    const n = 40_000
    const dx = 0.4 / n
    // From the far end: u(k) = a u(k-1) + b, marched inwards as a resistance and a source.
    let Y = 0
    let J = 0
    let slope = 1
    let offset = 0
    for (let k = n; k >= 1; k--) {
      const x = (k - 0.5) * dx
      const inStream = x < 0.01
      const G = inStream ? (x < 0.006 ? 0.7 : 0.5) : x < 0.006 ? 0.06 : 0.1
      Y += G * dx
      J += G * dx * (inStream ? 300 : 0)
      const bar = kA / dx
      const reach = bar / (bar + Y)
      if (x < 0.006) {
        offset += (slope * J) / (bar + Y)
        slope *= reach
      }
      J *= reach
      Y *= reach
    }
    const { admittanceWPerK, offsetW, edgeSlope, edgeOffsetK } = finAdmittance({ ...wire, swept }, true)
    expect(admittanceWPerK / Y).toBeCloseTo(1, 3)
    expect(offsetW / J).toBeCloseTo(1, 3)
    expect(edgeSlope / slope).toBeCloseTo(1, 3)
    expect(edgeOffsetK / offset).toBeCloseTo(1, 2)
  })

  test('with the tool off the stream is gone', () => {
    expect(finAdmittance({ ...wire, swept }, false).admittanceWPerK).toBeCloseTo(finAdmittance(wire, true).admittanceWPerK, 12)
    expect(finAdmittance({ ...wire, swept }, false).offsetW).toBe(0)
  })

  test('long stretches do not overflow', () => {
    const { admittanceWPerK, edgeSlope } = finAdmittance({ ...wire, stubM: 100 }, true)
    expect(admittanceWPerK).toBeCloseTo(Math.sqrt(kA * 0.06), 12)
    expect(edgeSlope).toBe(0)
  })
})
