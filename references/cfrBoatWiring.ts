import { ambientFactor, deratedCurrentA, groupingFactor } from '../packages/core/src/ampacity/index.ts'
import { cfr183425, groupingFactors, iso10133 } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const source = { status: 'published', source: 'maker of boat cable' } as const
const chain = (baseA: number, ...factors: readonly number[]) =>
  deratedCurrentA({ baseA, links: factors.map((factor) => ({ name: 'link', factor, source })) }).currentA
const bundled = (loadedConductors: number) => groupingFactor({ loadedConductors, table: '33-cfr-183.425' })

/** A maker's table for insulation of 105 C: gauge, current of one wire, then 3, 4 to 6, and 7 to 24 bundled, 1 or 2 and 3 inside an engine space. */
const boatCable = [
  ['18', 20, '14.0', '12.0', '10.0', '17.0', '11.9'],
  ['10', 60, '42.0', '36.0', '30.0', '51.0', '35.7'],
  ['6', 120, '84.0', '72.0', '60.0', '102.0', '71.4'],
  ['4/0', 445, '311.5', '267.0', '222.5', '378.25', '264.775'],
] as const
/** Engine-space factor that this maker takes, of a voluntary small-craft standard. */
const engineSpace = 0.85

export const reference: readonly Reference[] = [
  {
    source: 'Boat cable to UL 1426, table of a cable maker for 105 C insulation',
    clause: 'currents outside and inside an engine space, one to 24 conductors',
    status: 'published',
    cases: boatCable.flatMap(([gauge, baseA, three, six, many, inside, insideThree]): readonly ReferenceCase[] => [
      { title: `${gauge} AWG, ${baseA} A, 3 bundled`, printed: three, unit: 'A', got: () => chain(baseA, bundled(3)) },
      { title: `${gauge} AWG, ${baseA} A, 5 bundled`, printed: six, unit: 'A', got: () => chain(baseA, bundled(5)) },
      { title: `${gauge} AWG, ${baseA} A, 24 bundled`, printed: many, unit: 'A', got: () => chain(baseA, bundled(24)) },
      { title: `${gauge} AWG, ${baseA} A, 2 in an engine space`, printed: inside, unit: 'A', got: () => chain(baseA, engineSpace, bundled(2)) },
      { title: `${gauge} AWG, ${baseA} A, 3 in an engine space`, printed: insideThree, unit: 'A', got: () => chain(baseA, engineSpace, bundled(3)) },
    ]),
  },
  {
    source: '33 CFR 183.425',
    clause: 'note 1 to table 5, engine space at 50 C',
    status: 'from memory',
    notes:
      'Recorded differences: 200 C insulation is printed as 1.00 where the law of the other rows gives 0.94, the table lets it off; 80 C is recalled as 0.78 where the law gives 0.7746.',
    cases: cfr183425.engineSpace.map(({ limitC, factor }): ReferenceCase => {
      const got = () => ambientFactor({ limitC, ambientC: cfr183425.engineSpaceC, referenceAmbientC: cfr183425.referenceC })
      const recorded = { 80: '0.77', 200: '0.94' }[limitC as number]
      return recorded === undefined
        ? { title: `${limitC} C insulation`, printed: factor.toFixed(2), unit: '1', got }
        : { title: `${limitC} C insulation by the law, where the table has ${factor.toFixed(2)}`, printed: recorded, unit: '1', got, status: 'derived' }
    }),
  },
  {
    source: '33 CFR 183.425',
    clause: 'note 2 to table 5, bundled conductors',
    status: 'published',
    cases: groupingFactors['33-cfr-183.425'].rows
      .filter(({ status }) => status === 'published')
      .map(({ from, factor }) => ({ title: `${from} conductors`, printed: factor.toFixed(1), unit: '1', got: () => bundled(from), looksUp: true })),
  },
  {
    source: 'ISO 10133, Small craft, electrical systems',
    clause: 'engine-space multipliers, stated for 60 C and equal to the law at 50 C',
    status: 'from memory',
    notes: 'Recorded differences: 70 C is recalled as 0.75, which is the law for 75 C (70 C gives 0.71); 200 C is 1.00, let off as in 33 CFR.',
    cases: iso10133.engineSpace
      .filter(({ limitC }) => limitC !== 70 && limitC !== 200)
      .map(({ limitC, factor }) => ({
        title: `${limitC} C insulation`,
        printed: factor.toFixed(2),
        unit: '1',
        got: () => ambientFactor({ limitC, ambientC: 50, referenceAmbientC: 30 }),
      })),
  },
]
