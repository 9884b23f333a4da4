import { wireVerdict } from '@strandwise/core'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { jobFacts } from '../facts/inner.ts'
import { parseRepairJob } from '../job/index.ts'
import { insulationNames } from '../job/inner.ts'
import { judgeWire } from '../ways/inner.ts'
import { type AuditRow, auditJob, auditRow, auditStream } from './auditRow.ts'

const row: AuditRow = { name: 'pump', size: '16 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }
const judged = (given: unknown) => {
  const found = auditRow(given, 1)
  if ('error' in found) throw new Error(JSON.stringify(found))
  return found
}
const rank = ['sound', 'caution', 'cannot tell', 'unsound']
const refused = (given: unknown) => {
  const found = auditRow(given, 7)
  return 'error' in found ? found : undefined
}

describe('auditRow', () => {
  test('a sound wire: its figures, no reason', () => {
    expect(judged(row)).toMatchObject({ line: 1, name: 'pump', verdict: 'sound', fuseVerdict: null, reasons: [] })
  })

  test('an overloaded wire, a customary and a stated drop, a fuse that does not guard', () => {
    expect(judged({ ...row, size: '0.5 mm²', insulation: 'PVC', currentA: 20 })).toMatchObject({
      verdict: 'unsound',
      reasons: [expect.stringMatching(/^conductor \d+ °C, limit 70 °C$/), expect.anything()],
    })
    expect(judged({ ...row, outLengthM: 20 })).toMatchObject({ verdict: 'caution', reasons: [expect.stringMatching(/^drop 2\.34 V, allowed 0\.36 V$/)] })
    expect(judged({ ...row, outLengthM: 20, allowedDropV: 0.36 }).verdict).toBe('unsound')
    expect(judged({ ...row, fuseA: 30, fuseSeries: 'ISO 8820-3' })).toMatchObject({
      verdict: 'unsound',
      fuseVerdict: 'unsound',
      reasons: [expect.stringContaining('the wire bears')],
    })
    expect(judged({ ...row, fuseA: 7.5 }).fuseVerdict).toBe('sound')
  })

  test('a current without a steady state, and air at the limit, have no figures that they have not', () => {
    expect(judged({ ...row, size: '30 AWG', currentA: 200 })).toMatchObject({ verdict: 'unsound', conductorLowC: null, conductorHighC: null })
    expect(judged({ ...row, insulation: 'PVC', ambientC: 90 })).toMatchObject({ verdict: 'unsound', allowedA: null })
  })

  test('numbers as text, with and without a unit, are read as the numbers', () => {
    expect(judged({ ...row, outLengthM: '3', currentA: '4000 mA', ambientC: '104 °F', returnLengthM: '' })).toEqual(judged(row))
  })

  test.each([
    [
      { ...row, fuse: 3 },
      { field: 'fuse', value: 3, allowed: 'no such field; the closest is "fuseA"' },
    ],
    [
      { ...row, outLengthM: -3 },
      { field: 'outLengthM', value: -3, allowed: 'from 0.001 to 500 m' },
    ],
    [
      { ...row, currentA: Number.NaN },
      { field: 'currentA', value: Number.NaN, allowed: 'from 0.000001 to 2000 A' },
    ],
    [
      { ...row, currentA: '4 V' },
      { field: 'currentA', value: '4 V', allowed: 'from 0.000001 to 2000 A' },
    ],
    [
      { ...row, insulation: 'rubber' },
      { field: 'insulation', value: 'rubber', allowed: insulationNames.join(', ') },
    ],
    [
      { ...row, name: undefined },
      { field: 'name', value: undefined, allowed: 'a text of 1 to 200 characters' },
    ],
    [
      { ...row, areaMm2: 1 },
      { field: 'areaMm2', value: 1, allowed: 'one of areaMm2 and size' },
    ],
    [
      { ...row, size: '51 AWG' },
      { field: 'size', value: '51 AWG', allowed: expect.stringContaining('18 AWG') },
    ],
    [
      { ...row, loadedInBundle: 2.5 },
      { field: 'loadedInBundle', value: 2.5, allowed: 'a whole number from 1 to 200' },
    ],
    [
      { ...row, fuseA: 6.3, fuseSeries: 'ISO 8820-3' },
      { field: 'fuseA', value: 6.3, allowed: 'a rating of ISO 8820-3' },
    ],
    [
      { ...row, fuseSeries: 'ISO 8820-3' },
      { field: 'fuseA', value: undefined, allowed: 'the rating with fuseSeries' },
    ],
    [null, { field: '', value: null, allowed: expect.stringContaining('an object with name') }],
    [[row], { field: '', value: [row], allowed: expect.stringContaining('an object with name') }],
    [JSON.parse('{"__proto__": {"name": "x"}}'), { field: '__proto__', value: { name: 'x' }, allowed: expect.stringContaining('no such field') }],
  ])('refused by field: %j', (given, error) => {
    expect(refused(given)).toEqual({ line: 7, error })
  })

  test('a row is what the wire section of the same job’s plan says: verdict, findings, figures, whatever is left open', () => {
    const rows = fc.record(
      {
        size: fc.constantFrom('22 AWG', '18 AWG', '1.5 mm²', '7/0.3 mm', '10 AWG', '16 mm²'),
        insulation: fc.constantFrom(...insulationNames),
        material: fc.constantFrom('annealed-copper' as const, 'tinned-copper' as const, 'aluminium-1350' as const, 'copper-clad-aluminium' as const),
        insulationThicknessMm: fc.double({ min: 0.2, max: 2, noNaN: true }),
        outLengthM: fc.double({ min: 0.1, max: 50, noNaN: true }),
        returnLengthM: fc.double({ min: 0.1, max: 50, noNaN: true }),
        currentA: fc.double({ min: 0.1, max: 40, noNaN: true }),
        supplyV: fc.constantFrom(12, 24, 48),
        allowedDropV: fc.double({ min: 0.05, max: 4, noNaN: true }),
        ambientC: fc.double({ min: 0, max: 130, noNaN: true }),
        loadedInBundle: fc.integer({ min: 1, max: 12 }),
        fuseA: fc.constantFrom(1, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 60, 80, 6.3, 17, 125),
      },
      { requiredKeys: ['size', 'insulation', 'outLengthM', 'currentA', 'supplyV', 'ambientC'] },
    )
    /** The plan has a wrong fuse changed, so that in its section it is a caution; the list judges the fuse as fitted. */
    const changed = ['fuse-over-wire', 'fuse-below-load', 'fuse-none-serves']
    const seen = new Set<string>()
    fc.assert(
      fc.property(rows, (given) => {
        const { supplyV, allowedDropV, fuseA, currentA, ambientC, ...wire } = given
        const job = parseRepairJob({
          version: 1,
          circuit: { kind: 'power', supplyV, ...(allowedDropV === undefined ? {} : { allowedDropV }), ...(fuseA === undefined ? {} : { fuseA }) },
          load: { currentA },
          wire,
          damage: { kind: 'broken', fromTerminationMm: 50 },
          surroundings: { ambientC: Math.min(ambientC, 60), hottestC: ambientC },
        })
        const { section, verdict: core } = judgeWire(jobFacts(job))
        const found = judged({ name: 'a', ...given })
        const told = section.findings.filter(({ code }) => code !== 'fuse-missing' && (fuseA !== undefined || !code.startsWith('fuse-')))
        const fitted = core.findings.filter(({ topic }) => topic === 'fuse' && fuseA !== undefined)
        const others = told.filter(({ code }) => !code.startsWith('fuse-'))
        const worst = [...others, ...fitted]
          .map(({ verdict }) => verdict)
          .reduce((one, other) => (rank.indexOf(one) > rank.indexOf(other) ? one : other), 'sound')
        expect(found.verdict).toBe(worst)
        expect(found.reasons).toHaveLength([...others, ...fitted].filter(({ verdict }) => verdict !== 'sound').length)
        // What the section says of the fuse is core's finding, or its change.
        for (const { code, verdict } of told.filter((one) => one.code.startsWith('fuse-'))) {
          if (changed.includes(code)) expect(['caution', 'unsound']).toContain(verdict)
          else expect(fitted).toContainEqual(expect.objectContaining({ code, verdict }))
          if (changed.includes(code)) expect(found.fuseVerdict === 'unsound' || found.allowedA === null || verdict === 'unsound').toBe(true)
        }
        const value = (name: string) => section.values.find((one) => one.name === name)?.value ?? null
        expect(found.conductorHighC).toBe(value('conductor, in the hottest air'))
        expect(found.dropV).toBe(value('drop over the wire, out and back'))
        expect(found.allowedA).toBe(value('wire at steady state, in the hottest air'))
        for (const { code } of [...others, ...fitted]) seen.add(code)
      }),
      { numRuns: 200 },
    )
    expect([...seen].sort()).toEqual(
      expect.arrayContaining([
        'cca',
        'small-aluminium',
        'current-over-limit',
        'air-at-limit',
        'drop-over-budget',
        'drop-over-ours',
        'fuse-over-wire',
        'fuse-no-band',
      ]),
    )
  })

  test('auditJob: the same wire, for which core finds a size and a fuse that serve when fitted', () => {
    const thin = { ...row, size: '0.5 mm²', insulation: 'PVC', currentA: 9, fuseA: 15 } as const
    const read = auditJob(thin)
    if ('error' in read) throw new Error(read.error.field)
    const { verdict, dropV, size } = wireVerdict(read.job)
    expect(judged(thin)).toMatchObject({ verdict, dropV })
    expect(judged({ ...thin, size: `${size?.size} AWG`, fuseA: size?.fuseToFitA }).verdict).not.toBe('unsound')
    expect(auditJob({ ...thin, size: '51 AWG' })).toEqual({ error: expect.objectContaining({ field: 'size', value: '51 AWG' }) })
  })

  test('a frozen row is not changed', () => {
    expect(judged(Object.freeze({ ...row })).verdict).toBe('sound')
  })
})

test('auditStream keeps the order, counts rows from 1 and goes on behind a bad one', async () => {
  const found = []
  for await (const one of auditStream([row, 3, { ...row, name: 'last' }])) found.push(one)
  expect(found).toMatchObject([
    { line: 1, name: 'pump' },
    { line: 2, error: { field: '', value: 3 } },
    { line: 3, name: 'last' },
  ])
})
