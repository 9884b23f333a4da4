import { frozen } from '../errors/inner.ts'
import { terminalGiven } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedStrainReliefRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'sr-ties-splice-ends',
    decides: 'strain-relief',
    statement: 'Put a tie on each side of a splice or solder sleeve, off the sleeve and without bending the wire at its edge.',
    conditions: [
      {
        field: 'method',
        op: '=',
        values: ['soldered-lap', 'soldered-lineman-splice', 'crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'solder-sleeve'],
      },
    ],
    effect: 'requires',
    methods: [],
    values: { ties: 2 },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference', clause: 'section 4.07' },
  },
  {
    id: 'sr-first-tie-distance',
    decides: 'strain-relief',
    statement: 'First tie behind a connector: about 25 mm back at the nearest.',
    conditions: [terminalGiven],
    effect: 'limits',
    methods: [],
    values: { minMm: 25 },
    source: tradePractice,
  },
  {
    id: 'sr-splice-no-load',
    decides: 'strain-relief',
    statement: 'No splice carries weight or sustained pull, a soldered one least of all: clamp both sides so the wire hangs from the clamps.',
    conditions: [],
    effect: 'forbids',
    methods: [],
    values: { sustainedLoad: false },
    source: { status: 'common practice', source: 'Trade practice; low creep strength of solder held in the materials tables' },
  },
  {
    id: 'sr-bend-10d',
    decides: 'strain-relief',
    statement: 'Minimum bend radius of wire or bundle: ten times its outer diameter, except where it breaks out at a terminal strip and is well supported.',
    conditions: [],
    effect: 'limits',
    methods: [],
    values: { minRadiusDiameters: 10 },
    source: { status: 'published', source: 'US Army TM 1-1500-204-23-4 (26)-(27); FAA AC 43.13-1B para 11-96' },
  },
])
