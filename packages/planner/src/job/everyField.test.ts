import { describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/index.ts'
import { fieldsOf, metaOf, unwrap } from './fieldAt.ts'
import type { FieldMeta } from './fields.ts'
import { JobError, type JobIssue } from './jobError.ts'
import { parseRepairJob } from './parseRepairJob.ts'
import { repairJobShape } from './repairJobShape.ts'
import { twoSpellings } from './spellings.ts'

type Path = readonly (string | number)[]
type Schema = Parameters<typeof unwrap>[0]

const sleeve = {
  name: 'tube',
  material: 'polyolefin',
  suppliedInsideMm: 4,
  recoveredInsideMm: 2,
  recoveredWallMm: 0.8,
  longitudinalChange: { low: -0.1, high: 0.05 },
  adhesiveWallMm: 0.3,
}
/** A job with every optional field at least once, so that each can be replaced by a bad value. */
const full = {
  ...bilgePumpFeed,
  units: 'metric',
  circuit: { ...bilgePumpFeed.circuit, waveform: 'dc', allowedDropV: 0.4, prospectiveCurrentA: 500, fuseKind: 'blade', rules: ['small-craft'] },
  load: { ...bilgePumpFeed.load, onS: 30, offS: 300 },
  wire: { ...bilgePumpFeed.wire, outsideDiameterMm: 3, strandDiameterMm: 0.29, loadedInBundle: 3, bundleOutsideMm: 9, insulationGradeC: 105 },
  wireBeyond: { size: '18 AWG', material: 'tinned-copper', insulation: 'XLPE', outsideDiameterMm: 2.5 },
  terminal: { ...bilgePumpFeed.terminal, kind: 'ring', studMm: 5 },
  damage: { ...bilgePumpFeed.damage, where: 'feed', brokenStrands: 2 },
  surroundings: { ...bilgePumpFeed.surroundings, bendRadiusMm: 40, bendCycles: 1000, flammableVapour: false },
  tools: [
    {
      name: 'iron',
      kind: 'iron',
      powerW: 60,
      setC: 360,
      tipWidthMm: 2,
      contact: 'wetted',
      tipResistanceKPerW: 1.5,
      contactResistanceKPerW: 5,
      clipMm: 3,
      stubMm: 4,
    },
    { name: 'air', kind: 'hot-air', airC: 200, airSpeedMPerS: 5, nozzleMm: 20, stubMm: 4 },
  ],
  repair: 'permanent',
  readings: [{ ...bilgePumpFeed.readings?.[0], atC: 20 }, ...(bilgePumpFeed.readings ?? []).slice(1)],
  solders: ['Sn60Pb40'],
  sleeves: [sleeve],
  methods: ['solder-sleeve', 'new-crimped-terminal'],
}

function issuesOf(input: unknown): readonly JobIssue[] {
  try {
    parseRepairJob(input)
    return []
  } catch (error) {
    if (error instanceof JobError) return error.issues
    throw error
  }
}

const at = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((inside, key) => (inside as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key], value)

/** The job with the value at a path replaced or removed. */
function spoilt(path: Path, value: unknown, out = false): unknown {
  const copy = structuredClone(full) as unknown
  const holder = at(copy, path.slice(0, -1)) as Record<PropertyKey, unknown>
  const key = path.at(-1) ?? ''
  if (out) delete holder[key]
  else holder[key] = value
  return copy
}

interface Leaf {
  readonly path: Path
  readonly meta: FieldMeta
  readonly optional: boolean
}

function leaves(schema: Schema, value: unknown, path: Path): readonly Leaf[] {
  if (Array.isArray(value)) {
    const element = (unwrap(schema)._zod.def as unknown as { readonly element?: Schema }).element
    return element === undefined ? [] : value.flatMap((item, index) => leaves(element, item, [...path, index]))
  }
  const fields = fieldsOf(schema, (value as { readonly kind?: unknown } | undefined)?.kind)
  if (Object.keys(fields).length > 0 && typeof value === 'object' && value !== null) {
    return Object.entries(fields).flatMap(([key, field]) =>
      Object.hasOwn(value, key) ? leaves(field, (value as Record<string, unknown>)[key], [...path, key]) : [],
    )
  }
  const meta = metaOf(schema)
  return meta === undefined ? [] : [{ path, meta, optional: schema._zod.optin === 'optional' }]
}

const every = leaves(repairJobShape, full, [])
const named = every.map((leaf) => [leaf.path.join('.'), leaf] as const)

test('the full job is good, and gives every field that the schema has', () => {
  expect(issuesOf(full)).toEqual([])
  const given = new Set(every.map((leaf) => leaf.path.filter((key) => typeof key === 'string').join('.')))
  const missing = Object.keys(fieldsOf(repairJobShape)).flatMap((group) => {
    const inside = Object.keys(fieldsOf(fieldsOf(repairJobShape)[group] ?? repairJobShape))
    return inside.length === 0
      ? []
      : inside.map((key) => `${group}.${key}`).filter((name) => ![...given].some((path) => path === name || path.startsWith(`${name}.`)))
  })
  // A wire has either an area or a size, and a load one of three fields.
  expect(missing).toEqual(['load.powerW', 'load.resistanceOhm', 'wire.areaMm2', 'wireBeyond.areaMm2'])
  expect(every.length).toBeGreaterThan(80)
})

describe.each(named)('%s', (name, { path, meta, optional }) => {
  const expectIssue = (input: unknown) => {
    const issue = issuesOf(input).find((item) => item.path === name || name.startsWith(`${item.path}.`))
    expect(issue, JSON.stringify(issuesOf(input))).toBeDefined()
    expect(issue?.allowed.length).toBeGreaterThan(0)
  }

  test('wrong types', () => {
    const wrong = typeof at(full, path) === 'string' ? [3, null, [], {}, true] : ['many', null, [], {}]
    for (const value of wrong) expectIssue(spoilt(path, value))
  })

  test('out of its domain, with what is allowed and an example', () => {
    if (meta.low === undefined || meta.high === undefined) {
      expectIssue(spoilt(path, 'x'.repeat(1000)))
      return
    }
    for (const value of [meta.low - 1, meta.high * 2 + 1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) expectIssue(spoilt(path, value))
    expect(issuesOf(spoilt(path, meta.low - 1))[0]).toMatchObject({
      allowed: expect.stringContaining(String(meta.high)),
      example: expect.stringContaining(String(path.at(-1))),
    })
  })

  test(optional ? 'may be left out' : 'is missed where it is left out', () => {
    const issues = issuesOf(spoilt(path, undefined, true)).filter(
      (item) => item.path === name && item.value === undefined && !item.allowed.includes('together') && !item.allowed.includes('with '),
    )
    expect(issues.length > 0).toBe(!optional)
  })
})

const spellings = Object.entries(twoSpellings).flatMap(([group, fields]) => fields.map((field) => [`${group}.${field.written}`, group, field] as const))

test.each(spellings)('%s: read with its unit, refused with another unit, without one, and twice', (_name, group, field) => {
  const holder =
    group === 'tube'
      ? ['solderSleeve', 'tube']
      : Array.isArray((full as Readonly<Record<string, unknown>>)[group])
        ? [group, field.fixed === 'airC' || field.fixed === 'airSpeedMPerS' || field.fixed === 'nozzleMm' ? 1 : 0]
        : [group]
  const path = [...holder, field.written]
  for (const value of ['5 lux', '5', 5, ''])
    expect(
      issuesOf(spoilt(path, value)).map((issue) => issue.path),
      String(value),
    ).toContain(path.join('.'))
  expect(issuesOf(spoilt(path, '1 mm')).length).toBeGreaterThan(0)
})
