import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { airProperties, churchillBernsteinNusselt } from '../heat/index.ts'
import type { HeatJointInput, HotAirTool, Tool } from './heatJointTypes.ts'
import { readSource, readStream, readSweep, requireAir } from './readTool.ts'
import { filmAt } from './streamFilm.ts'

const air: HotAirTool = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10 }
const side = { areaMm2: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.48 } as const
const joint: HeatJointInput = {
  ambientC: 23,
  tool: air,
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 },
  conductors: [side],
  alloy: 'SAC305',
  toolOffS: 2,
}

function refusal(run: () => unknown): string {
  try {
    run()
    return 'accepted'
  } catch (error) {
    return error instanceof DomainError ? `${error.parameter} ${error.code}` : String(error)
  }
}

test('air from 100 to 1900 K, both ends included', () => {
  expect(refusal(() => requireAir('airC', -173))).toBe('accepted')
  expect(refusal(() => requireAir('airC', 1626))).toBe('accepted')
  expect(refusal(() => requireAir('airC', -173.001))).toBe('airC contradiction')
  expect(refusal(() => requireAir('airC', 1626.001))).toBe('airC contradiction')
})

describe('the film of a stream', () => {
  /** Churchill and Bernstein across the joint, at the film temperature, without a table. */
  const wanted = (tool: HotAirTool, surfaceC: number): number => {
    const { densityKgPerM3, viscosityPaS, prandtl, conductivityWPerMK } = airProperties((tool.airC + surfaceC) / 2, tool.pressurePa ?? 101325)
    const reynolds = (densityKgPerM3 * (tool.airSpeedMPerS ?? 0) * 2.6e-3) / viscosityPaS
    return (churchillBernsteinNusselt({ reynolds, prandtl }) * conductivityWPerMK) / 2.6e-3
  }
  const clipAt = (temperatureC: number) => ({ ...side, clip: { distanceMm: 3, resistanceKPerW: 1, temperatureC } })

  test.each([
    ['between air and surroundings', 350, 23, [side], [23, 350]],
    ['of air colder than they are', -40, 23, [side], [-40, 23]],
    ['down to the coldest clip', 350, 23, [clipAt(-60), side], [-60, 350]],
    ['up to the hottest clip', 350, 23, [side, clipAt(500)], [23, 500]],
    ['as far as air is known below', 350, 23, [clipAt(-250)], [-173, 350]],
    ['as far as air is known above', 1626, 23, [clipAt(2000)], [23, 1626]],
  ] as const)('%s', (_name, airC, ambientC, conductors, ends) => {
    const tool = { ...air, airC }
    const film = readStream(tool, { ...joint, ambientC, conductors }, 2.6e-3, 1)
    for (const C of ends) {
      expect(C - ambientC).toBeGreaterThanOrEqual(film.lowRiseK)
      expect(C - ambientC).toBeLessThanOrEqual(film.highRiseK)
      expect(Math.abs(filmAt(film, C - ambientC) / wanted(tool, C) - 1)).toBeLessThan(ends[1] - ends[0] > 1000 ? 2e-8 : 1e-9)
    }
    // A trial value beyond the ends finds a kelvin of room, but no air that is not known.
    expect(film.lowRiseK + ambientC).toBe(Math.max(ends[0] - 1, -173))
    expect(film.highRiseK + ambientC).toBe(Math.min(ends[1] + 1, 1626))
  })

  test('given, it stands in place of what the speed would give, at any temperature', () => {
    const film = readStream({ ...air, airC: 2000, filmWPerM2K: 120 }, joint, 2.6e-3, 0.5)
    expect(filmAt(film, 900)).toBe(60)
  })

  test('a speed is checked even where the film is given', () => {
    expect(refusal(() => readStream({ ...air, filmWPerM2K: 120, airSpeedMPerS: -1 }, joint, 2.6e-3, 1))).toBe('tool.airSpeedMPerS out-of-range')
    expect(refusal(() => readStream({ ...air, filmWPerM2K: 120, pressurePa: 0 }, joint, 2.6e-3, 1))).toBe('tool.pressurePa out-of-range')
  })
})

describe('an iron', () => {
  const iron: Tool = { kind: 'iron', setC: 360, tipResistanceKPerW: 2, contactResistanceKPerW: 6 }
  const read = (change: object) => readSource({ ...joint, tool: { ...iron, ...change } }, 2.6e-3, 1, 1)

  test('without mass is one resistance; the contact alone is scaled', () => {
    expect(read({})).toEqual({ kind: 'iron', setRiseK: 337, maximumW: Infinity, resistanceKPerW: 8 })
    expect(readSource({ ...joint, tool: iron }, 2.6e-3, 3, 1)).toMatchObject({ resistanceKPerW: 20 })
    expect(read({ tipHeatCapacityJPerK: 0.99e-9 }).kind).toBe('iron')
  })

  test('with mass it stores heat between its two resistances, from a nanojoule a kelvin on', () => {
    const heavy = { kind: 'heavy-iron', setRiseK: 337, maximumW: 40, tipResistanceKPerW: 2, contactResistanceKPerW: 6, capacityJPerK: 0.5 }
    expect(read({ tipHeatCapacityJPerK: 0.5, maximumW: 40 })).toEqual(heavy)
    expect(read({ tipHeatCapacityJPerK: 1e-9 }).kind).toBe('heavy-iron')
    expect(read({ tipHeatCapacityJPerK: 0.5, tipResistanceKPerW: 1e-6 }).kind).toBe('heavy-iron')
    expect(refusal(() => read({ tipHeatCapacityJPerK: 0.5, tipResistanceKPerW: 0.99e-6 }))).toBe('tool.tipResistanceKPerW contradiction')
  })

  test('sweeps no wire, whatever its form once held', () => {
    expect(readSweep({ ...iron, sweptMm: 5, sweptFilmWPerM2K: -1 } as Tool, 23, 1)).toBeNull()
  })
})

test('a stream sweeps the wires only as far as it says, its film scaled', () => {
  expect(readSweep(air, 23, 1)).toBeNull()
  expect(readSweep({ ...air, sweptMm: 12, sweptFilmWPerM2K: 180 }, 23, 0.5)).toEqual({ toM: 0.012, filmWPerM2K: 90, riseK: 327 })
})
