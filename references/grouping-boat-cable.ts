import { deratedCurrentA, groupingFactor } from '../packages/core/src/ampacity/index.ts'
import { groupingFactors } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Gauge, base current, outside engine spaces with 3, 4 to 6 and 7 to 24 bundled, inside them with 1 to 2 and 3. */
const rows = [
  ['18', 20, '14.0', '12.0', '10.0', '17.0', '11.9'],
  ['10', 60, '42.0', '36.0', '30.0', '51.0', '35.7'],
  ['6', 120, '84.0', '72.0', '60.0', '102.0', '71.4'],
  ['4/0', 445, '311.5', '267.0', '222.5'],
] as const

/** The small-craft trade rule that the table uses in engine spaces; the federal note has 0.86. */
const engineSpace = {
  name: 'engine space',
  factor: 0.85,
  source: { status: 'common practice', source: 'boat wiring practice, 105 C insulation in engine spaces' },
} as const

function amperes(baseA: number, bundled: number, inside: boolean): number {
  const grouping = {
    name: 'grouping',
    factor: groupingFactor({ loadedConductors: bundled, table: '33-cfr-183.425' }),
    source: groupingFactors['33-cfr-183.425'].provenance,
  }
  return deratedCurrentA({ baseA, links: inside ? [engineSpace, grouping] : [grouping] }).currentA
}

function casesOf([gauge, baseA, three, six, seven, insideOne, insideThree]: (typeof rows)[number]): readonly ReferenceCase[] {
  const one = (printed: string, bundled: number, inside: boolean): ReferenceCase => ({
    title: `AWG ${gauge}, ${baseA} A, ${bundled} bundled, ${inside ? 'inside' : 'outside'} engine spaces`,
    printed,
    unit: 'A',
    got: () => amperes(baseA, bundled, inside),
  })
  const outside = [one(three, 3, false), one(six, 6, false), one(seven, 7, false)]
  return insideOne === undefined ? outside : [...outside, one(insideOne, 2, true), one(insideThree, 3, true)]
}

export const reference: Reference = {
  source: 'UL 1426, Electrical Cables for Boats',
  clause: "a cable maker's current table, 105 C insulation",
  status: 'published',
  notes: 'Base current and factors are inputs; each case checks the chain. The engine-space figures of 4/0 are left out: how they were rounded is not known.',
  cases: rows.flatMap(casesOf),
}
