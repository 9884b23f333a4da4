import { describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/index.ts'
import type { JobReading, Place, RepairJob } from '../job/index.ts'
import { faultsFoundAtPlace, healthyCalledFaulty } from './experiments.sample.ts'
import { diagnose } from './index.ts'

const read = (kind: JobReading['kind'], from: Place, to: Place, value: number, more: Partial<JobReading> = {}): JobReading => ({
  kind,
  from,
  to,
  load: kind === 'resistance' || kind === 'four-wire' ? 'off' : 'on',
  value,
  ...more,
})
const pump = (...readings: readonly JobReading[]): RepairJob => ({ ...bilgePumpFeed, readings })
const codes = (job: RepairJob): readonly string[] => diagnose(job).answered.map(({ finding }) => finding.code)

describe('what the readings prove', () => {
  test('a drop far above a healthy joint proves it, and each reading is answered', () => {
    const { fault, at, answered } = diagnose(bilgePumpFeed)
    expect({ fault, at }).toEqual({ fault: 'proven', at: { from: 'joint-in', to: 'joint-out' } })
    expect(answered.map(({ reading, finding }) => [reading, finding.code])).toEqual([
      [0, 'ohms-cannot-tell'],
      [1, 'drop-fault'],
    ])
  })
  test('a healthy run of wire never proves a fault', () => {
    expect(diagnose(pump(read('drop', 'fuse-out', 'joint-in', 0.178))).fault).toBe('none here')
  })
  test('two voltages against one place equal their difference', () => {
    const pair = diagnose(
      pump(read('voltage', 'joint-in', 'source-', 12.2, { currentA: 3.6 }), read('voltage', 'joint-out', 'source-', 10.2, { currentA: 3.6 })),
    )
    expect(pair.at).toEqual({ from: 'joint-in', to: 'joint-out' })
    const joint = pair.stretches.find(({ from }) => from === 'joint-in')
    expect(joint?.verdict).toBe('fails')
    expect(joint?.measuredV?.low).toBeGreaterThan(1.7)
    expect(joint?.measuredV?.high).toBeLessThan(2.3)
  })
  test('a long reading and its parts bound the part that was not read', () => {
    const { at } = diagnose(
      pump(
        read('drop', 'fuse-out', 'terminal-mate', 2.1, { currentA: 3.6 }),
        read('drop', 'fuse-out', 'joint-in', 0.15, { currentA: 3.6 }),
        read('drop', 'joint-out', 'terminal-mate', 0.002, { currentA: 3.6, resolution: 0.0001 }),
      ),
    )
    expect(at).toEqual({ from: 'joint-in', to: 'joint-out' })
  })
  test('contradictory readings prove nothing and name each other', () => {
    const job = pump(read('drop', 'joint-in', 'joint-out', 1.9, { currentA: 3.6 }), read('drop', 'fuse-out', 'terminal-wire', 0.5, { currentA: 3.6 }))
    expect(diagnose(job)).toMatchObject({ fault: 'not shown', at: null })
    expect(codes(job)).toEqual(['reading-contradicts', 'reading-contradicts'])
  })
  test('still and moved do not contradict each other', () => {
    const job = pump(read('drop', 'joint-in', 'joint-out', 0.001, { resolution: 0.0001 }), read('drop', 'joint-in', 'joint-out', 1.9, { when: 'moved' }))
    expect(diagnose(job)).toMatchObject({ fault: 'proven', at: { from: 'joint-in', to: 'joint-out' } })
  })
  test('readings at different currents meet at the working current, and each is answered at its own', () => {
    const fine = { resolution: 0.0001 }
    const job = pump(
      read('drop', 'joint-in', 'joint-out', 0.02, { ...fine, currentA: 0.5 }),
      read('drop', 'fuse-out', 'terminal-wire', 0.35, { ...fine, currentA: 4.2 }),
    )
    const { at, stretches } = diagnose(job)
    expect(at).toEqual({ from: 'joint-in', to: 'joint-out' })
    // 20 mV at 0.5 A are 168 mV at 4.2 A.
    expect(stretches.find(({ from }) => from === 'joint-in')?.measuredV?.low).toBeCloseTo(0.168 * (1 - 0.018), 2)
    expect(codes(job)).toEqual(['drop-fault', 'drop-fault'])
  })
  test('return: the damaged joint on the way back is judged between load- and source-', () => {
    const back = {
      ...pump(read('drop', 'joint-in', 'joint-out', 1.2, { currentA: 4 }), read('drop', 'load-', 'return-joint', 1.2)),
      damage: { ...bilgePumpFeed.damage, where: 'return' as const },
    }
    expect(diagnose(back)).toMatchObject({ fault: 'proven', at: { from: 'joint-in', to: 'joint-out' } })
    expect(codes(back)).toEqual(['drop-fault', 'misplaced'])
  })
  test('load- to return-joint and return-joint to source- are judged together', () => {
    const half = (value: number) => [
      read('drop', 'load-', 'return-joint', value, { currentA: 4.2 }),
      read('drop', 'return-joint', 'source-', value, { currentA: 4.2 }),
    ]
    expect(diagnose(pump(...half(0.16))).at).toEqual({ from: 'load-', to: 'source-' })
    expect(diagnose(pump(...half(0.09))).at).toBeNull()
  })
  test('a clamp gives the current of the readings in its state that name none', () => {
    const clamp = read('current', 'source+', 'fuse-in', 3.6)
    const joint = read('drop', 'joint-in', 'joint-out', 0.1, { resolution: 0.001 })
    const healthy = (job: RepairJob) => diagnose(job).stretches.find(({ from }) => from === 'joint-in')?.healthyV.high as number
    expect(healthy(pump(joint, clamp))).toBeLessThan(0.003)
    expect(healthy(pump(joint))).toBeGreaterThan(0.01)
    expect(healthy(pump(joint, { ...clamp, when: 'moved' }))).toBeGreaterThan(0.01)
  })
  test('swapped probes change nothing', () => {
    const straight = diagnose(pump(read('drop', 'joint-in', 'joint-out', 1.9, { currentA: 3.6 })))
    expect(diagnose(pump(read('drop', 'joint-out', 'joint-in', 1.9, { currentA: 3.6 })))).toEqual(straight)
    expect(diagnose(pump(read('drop', 'joint-out', 'joint-in', -1.9, { currentA: 3.6 })))).toEqual(straight)
  })
  test('volts that stop off load show where the circuit is open', () => {
    const off = { load: 'off' } as const
    const { at } = diagnose(
      pump(read('voltage', 'source+', 'source-', 12.5, off), read('voltage', 'load+', 'source-', 0, off), read('voltage', 'fuse-out', 'source-', 12.5, off)),
    )
    expect(at).toEqual({ from: 'fuse-out', to: 'load+' })
  })
  test('no drop without current proves nothing good', () => {
    const job = pump(read('voltage', 'joint-in', 'joint-out', 0, { load: 'off' }))
    expect(diagnose(job).fault).toBe('not shown')
    expect(codes(job)).toEqual(['off-load-drop'])
  })
  test('an open circuit is told as open, never as volts at the working current', () => {
    const job = pump(read('resistance', 'joint-in', 'joint-out', 243), read('resistance', 'fuse-out', 'terminal-wire', 2e7))
    const { answered } = diagnose(job)
    expect(answered.map(({ finding }) => finding.code)).toEqual(['ohms-open', 'ohms-open'])
    expect(answered.map(({ finding }) => finding.text).join()).not.toContain('1020')
  })
  test('a short and a leak with the load unplugged are proven', () => {
    expect(codes(pump(read('resistance', 'load+', 'source-', 0.5)))).toEqual(['short'])
    expect(codes(pump(read('resistance', 'load+', 'source-', 40_000)))).toEqual(['leak'])
    expect(codes(pump(read('resistance', 'load+', 'source-', 1e7)))).toEqual(['no-short'])
  })
  test('a low supply is told as weak', () => {
    expect(diagnose(pump(read('voltage', 'source+', 'source-', 9.5)))).toMatchObject({ fault: 'proven', at: { from: 'source+', to: 'source-' } })
  })
  test('a drop under load counts against ohms that read well dead', () => {
    const job = pump(read('four-wire', 'joint-in', 'joint-out', 0.001), read('drop', 'joint-in', 'joint-out', 1.9, { currentA: 3.6 }))
    expect(diagnose(job).fault).toBe('proven')
    expect(codes(job)[0]).toBe('ohms-yield')
  })
  test('more volts than the supply has prove nothing', () => {
    const job = pump(read('drop', 'joint-in', 'joint-out', 30))
    expect(diagnose(job).fault).toBe('not shown')
    expect(codes(job)).toEqual(['beyond-supply'])
  })
})

// In full in the long proof: npm run prove -- --part planner.
describe('against an independent nodal solver', () => {
  test('no healthy circuit is proven faulty', () => {
    expect(healthyCalledFaulty(60, 11)).toBe(0)
  }, 30_000)
  test('a series fault of three times the interval is proven at its stretch in 95 of 100', () => {
    expect(faultsFoundAtPlace(60, 12)).toBeGreaterThanOrEqual(0.95)
  }, 30_000)
})
