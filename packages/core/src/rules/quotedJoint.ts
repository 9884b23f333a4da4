import { frozen } from '../errors/inner.ts'
import { whenSolderedByHand } from './conditions.ts'
import { solderedByHand } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedJointRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'jg-lap-overlap',
    decides: 'joint',
    statement:
      "A soldered lap splice: tinned conductors side by side, touching over three to six conductor diameters, not twisted together, no strand sticking out, neither over the other's insulation.",
    conditions: [{ field: 'method', op: '=', values: ['soldered-lap'] }],
    effect: 'requires',
    methods: ['soldered-lap'],
    values: { overlapMinDiameters: 3, overlapMaxDiameters: 6, twistTogether: false },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 19.6.1' },
  },
  {
    id: 'jg-insulation-gap-solder',
    decides: 'joint',
    statement: 'Leave about one outer wire diameter of bare wire between insulation and solder; never more than two, and no insulation in the solder.',
    conditions: [whenSolderedByHand],
    effect: 'limits',
    methods: solderedByHand,
    values: { targetInsulatedDiameters: 1, maxInsulatedDiameters: 2 },
    source: { status: 'published', source: 'US Army STP 11-25R13-SM-TG para A-9; NASA-STD-8739.3 para 9.1.2' },
  },
  {
    id: 'jg-strength-by-table',
    decides: 'joint',
    statement: 'No ordinary splice is as strong as its wire. A crimp is judged by the pull tables, a soldered joint by its looks, its reading and its support.',
    conditions: [],
    effect: 'limits',
    methods: [],
    values: { fullWireStrength: false },
    source: tradePractice,
  },
  {
    id: 'jg-lineman',
    decides: 'joint',
    statement:
      "Lineman's splice: tinned wires, at least three tight turns round each, no gaps, no overlaps, ends trimmed, nothing over the other wire's insulation; then solder.",
    conditions: [{ field: 'method', op: '=', values: ['soldered-lineman-splice'] }],
    effect: 'requires',
    methods: ['soldered-lineman-splice'],
    values: { minTurnsEach: 3, gaps: false, pretinned: true },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'page 84, as quoted' },
  },
])
