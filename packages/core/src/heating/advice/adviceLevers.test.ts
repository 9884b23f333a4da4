import { describe, expect, test } from 'vitest'
import type { HeatJointInput, Tool } from '../heatJointTypes.ts'
import { iron, ironJoint } from '../ironJoint.sample.ts'
import { leverOf, leversOf, moved } from './adviceLevers.ts'

const air: Tool = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10 }
const side = { areaMm2: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.48 } as const
const joint = ironJoint(side, { ...side, stubMm: 8 })
const by = (tool: Tool): HeatJointInput => ({ ...joint, tool })

describe('the levers of a joint', () => {
  test('are those of its tool, its stubs and its time', () => {
    expect(leversOf(joint)).toEqual(['contactResistanceKPerW', 'tipResistanceKPerW', 'setC', 'maximumW', 'stubMm', 'toolOffS'])
    expect(leversOf(by(air))).toEqual(['airC', 'airSpeedMPerS', 'stubMm', 'toolOffS'])
    expect(leversOf(by({ ...air, filmWPerM2K: 100 }))).toEqual(['airC', 'stubMm', 'toolOffS'])
    // An iron ignores a stream's film coefficient.
    expect(leversOf(by({ ...iron, filmWPerM2K: 100 } as Tool))).toContain('setC')
  })

  test('stand where the input has them, the stubs at the shorter', () => {
    expect(leversOf(joint).map((lever) => leverOf(joint, lever))).toEqual([3, 1.5, 360, 60, 5, 4])
    expect(leversOf(by(air)).map((lever) => leverOf(by(air), lever))).toEqual([350, 10, 5, 4])
  })

  test('are none where there is nothing to move', () => {
    const { maximumW: _limit, ...free } = iron
    expect(leverOf(by(free), 'maximumW')).toBeNull()
    expect(leverOf(by({ ...iron, tipResistanceKPerW: 0 }), 'tipResistanceKPerW')).toBeNull()
    expect(leverOf(by({ ...iron, tipResistanceKPerW: 1e-3 }), 'tipResistanceKPerW')).toBe(1e-3)
    expect(leverOf(by({ ...iron, setC: 0 }), 'setC')).toBe(0)
    expect(leverOf({ ...joint, conductors: [{ ...side, stubMm: 0 }] }, 'stubMm')).toBe(0)
    expect(leverOf(by({ kind: 'hot-air', airC: 0, filmWPerM2K: 9 }), 'airC')).toBe(0)
    expect(leverOf(by({ kind: 'hot-air', airC: 0, filmWPerM2K: 9 }), 'airSpeedMPerS')).toBeNull()
  })
})

describe('a lever moved', () => {
  test('of the tool changes that alone', () => {
    expect(moved(joint, 'setC', 300)).toEqual(by({ ...iron, setC: 300 }))
    expect(moved(by(air), 'airSpeedMPerS', 20)).toEqual(by({ ...air, airSpeedMPerS: 20 }))
  })

  test('stubs shorter than the value grow to it, longer ones stay', () => {
    expect(moved(joint, 'stubMm', 6).conductors.map(({ stubMm }) => stubMm)).toEqual([6, 8])
    expect(moved(joint, 'stubMm', 12).conductors.map(({ stubMm }) => stubMm)).toEqual([12, 12])
  })

  test('a time watched by default follows the tool, a given one is kept after it; samples stay within the run', () => {
    expect(moved(joint, 'toolOffS', 9)).toEqual({ ...joint, toolOffS: 9 })
    expect(moved(joint, 'toolOffS', 1)).toEqual({ ...joint, toolOffS: 1 })
    expect(moved({ ...joint, sampleTimesS: [33] }, 'toolOffS', 1)).toMatchObject({ toolOffS: 1, observeS: 33 })
    expect(moved({ ...joint, observeS: 6 }, 'toolOffS', 9)).toMatchObject({ toolOffS: 9, observeS: 11 })
    expect(moved({ ...joint, observeS: 6 }, 'toolOffS', 3)).toMatchObject({ toolOffS: 3, observeS: 6 })
  })
})
