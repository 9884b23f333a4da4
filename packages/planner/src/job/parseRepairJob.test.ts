import { describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/bilgePumpFeed.ts'
import { demoJobs } from '../demo/index.ts'
import { JobError, type JobIssue } from './jobError.ts'
import { parseRepairJob } from './parseRepairJob.ts'

function issuesOf(input: unknown): readonly JobIssue[] {
  try {
    parseRepairJob(input)
  } catch (error) {
    if (error instanceof JobError) return error.issues
    throw error
  }
  return []
}

const job = bilgePumpFeed
const withLoad = (load: unknown) => ({ ...job, load })
const withWire = (wire: object) => ({ ...job, wire: { ...job.wire, ...wire } })

describe('a good job', () => {
  test.each(Object.entries(demoJobs))('the demo %s is read, and reading it again changes nothing', (_name, demo) => {
    const once = parseRepairJob(demo)
    expect(once).toEqual(demo)
    expect(parseRepairJob(JSON.parse(JSON.stringify(once)))).toEqual(once)
  })

  test('a field may be written with its unit in the value', () => {
    const written = {
      ...job,
      load: { current: '4200 mA', inrush: '12 A', inrushTime: '100 ms', stall: '14 A' },
      wire: { size: '16 AWG', insulation: 'XLPE', outLength: '10 ft 6 in', insulationThickness: '0.65 mm' },
      surroundings: { ...job.surroundings, ambientC: undefined, ambient: '64.4 °F' },
    }
    const { ambientC: _gone, ...surroundings } = written.surroundings
    const read = parseRepairJob({ ...written, surroundings })
    expect(read.load).toEqual({ currentA: 4.2, inrushA: 12, inrushS: 0.1, stallA: 14 })
    expect(read.wire.outLengthM).toBeCloseTo(3.2004, 12)
    expect(read.surroundings?.ambientC).toBeCloseTo(18, 12)
  })

  test('a reading takes ohm or volt by its kind', () => {
    const reading = { kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', value: '350 mV' }
    expect(parseRepairJob({ ...job, readings: [reading] }).readings?.[0]?.value).toBeCloseTo(0.35, 12)
    expect(issuesOf({ ...job, readings: [{ ...reading, kind: 'four-wire' }] })[0]).toMatchObject({ path: 'readings.0.value', value: '350 mV' })
  })

  test('the input is not changed', () => {
    const frozen = Object.freeze({ ...job, load: Object.freeze({ current: '4.2 A' }) })
    expect(parseRepairJob(frozen).load.currentA).toBe(4.2)
    expect(frozen.load).toEqual({ current: '4.2 A' })
  })
})

describe('a bad job is refused with path, value, what is allowed and an example', () => {
  test('a negative length', () => {
    expect(issuesOf(withWire({ outLengthM: -3 }))).toEqual([{ path: 'wire.outLengthM', value: -3, allowed: 'from 0.001 to 500 m', example: '"outLengthM": 5' }])
  })

  test('a gauge that does not exist', () => {
    expect(issuesOf(withWire({ size: '51 AWG' }))).toMatchObject([{ path: 'wire.size', value: '51 AWG', example: '"size": "18 AWG"' }])
    expect(issuesOf(withWire({ size: '7', standard: 'SAE J1128' }))[0]?.allowed).toContain('SAE J1128')
    expect(issuesOf(withWire({ size: '1.7', standard: 'IEC 60228' }))[0]?.allowed).toContain('1.5')
  })

  test('an unknown field, with the closest one', () => {
    expect(issuesOf(withLoad({ curent: '4 A' }))[0]).toMatchObject({ path: 'load.curent', value: '4 A' })
    expect(issuesOf(withLoad({ curent: '4 A' }))[0]?.allowed).toContain('the closest is "currentA"')
  })

  test('both spellings at once', () => {
    expect(issuesOf(withLoad({ current: '4.2 A', currentA: 4.2 }))).toMatchObject([
      { path: 'load.current', allowed: 'one spelling: currentA or current, not both' },
    ])
  })

  test('a written field without a unit, or with the wrong one, keeps the name that was written', () => {
    expect(issuesOf(withLoad({ current: 4.2 }))).toMatchObject([{ path: 'load.current', value: 4.2 }])
    expect(issuesOf(withLoad({ current: '4.2 V' }))).toMatchObject([{ path: 'load.current', value: '4.2 V' }])
    expect(issuesOf(withLoad({ current: '-4.2 A' }))).toMatchObject([{ path: 'load.current', value: '-4.2 A' }])
  })

  test('no load, two loads', () => {
    expect(issuesOf(withLoad({}))).toMatchObject([{ path: 'load', value: undefined }])
    expect(issuesOf(withLoad({ currentA: 1, powerW: 12 }))[0]?.allowed).toBe('one of currentA, powerW and resistanceOhm')
  })

  test('a tool that is neither iron nor hot air', () => {
    expect(issuesOf({ ...job, tools: [{ name: 'x', kind: 'laser' }] })).toEqual([
      { path: 'tools.0.kind', value: 'laser', allowed: 'iron, hot-air', example: '"kind": "iron"' },
    ])
  })

  test.each([
    ['hottest below now', { surroundings: { ...job.surroundings, hottestC: 0 } }, 'surroundings.hottestC'],
    ['coldest above now', { surroundings: { ...job.surroundings, coldestC: 40 } }, 'surroundings.coldestC'],
    ['more broken strands than strands', { damage: { ...job.damage, brokenStrands: 20 } }, 'damage.brokenStrands'],
    ['a bundle thinner than its wire', { wire: { ...job.wire, outsideDiameterMm: 3, bundleOutsideMm: 2 } }, 'wire.bundleOutsideMm'],
    ['an outside thinner than the metal', { wire: { ...job.wire, size: undefined, areaMm2: 10, outsideDiameterMm: 3 } }, 'wire.outsideDiameterMm'],
    [
      'a tube that does not shrink',
      { sleeves: [{ material: 'PVC', suppliedInsideMm: 3, recoveredInsideMm: 3, recoveredWallMm: 1, longitudinalChange: { low: 0, high: 0 } }] },
      'sleeves.0.recoveredInsideMm',
    ],
    ['a drop with the load off', { readings: [{ kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'off', value: 1 }] }, 'readings.0.load'],
    ['ohms with the load on', { readings: [{ kind: 'resistance', from: 'joint-in', to: 'joint-out', load: 'on', value: 1 }] }, 'readings.0.load'],
    ['a count of strands that is not whole by a hair', { wire: { ...job.wire, strandCount: 55.00000000000001 } }, 'wire.strandCount'],
    ['an inrush without its time', { load: { currentA: 4, inrushA: 10 } }, 'load.inrushA'],
    ['an interval the wrong way round', { terminal: { acceptsMm2: { low: 2, high: 1 } } }, 'terminal.acceptsMm2'],
  ])('%s', (_title, change, path) => {
    const changed = { ...job, ...change } as { readonly wire: Record<string, unknown> }
    const wire = Object.fromEntries(Object.entries(changed.wire).filter(([, value]) => value !== undefined))
    expect(issuesOf({ ...changed, wire }).map((issue) => issue.path)).toContain(path)
  })

  test('things that are no job at all', () => {
    for (const input of [null, undefined, 3, 'job', [], true]) expect(issuesOf(input)[0]).toMatchObject({ path: '' })
    expect(issuesOf({}).map((issue) => issue.path)).toEqual(['version', 'circuit', 'load', 'wire', 'damage'])
  })

  test('__proto__ is an unknown field and changes nothing', () => {
    const hostile = JSON.parse('{"__proto__": {"polluted": 1}, "version": 1}')
    expect(issuesOf(hostile).map((issue) => issue.path)).toContain('__proto__')
    expect(({} as { polluted?: number }).polluted).toBeUndefined()
  })

  test('deep nesting ends in a refusal, not in a full stack', () => {
    let nested: unknown = 1
    for (let depth = 0; depth < 20_000; depth++) nested = [nested]
    for (const key of ['circuit', 'tools', 'readings', 'sleeves', 'wire']) expect(issuesOf({ ...job, [key]: nested }).length, key).toBeGreaterThan(0)
  })
})
