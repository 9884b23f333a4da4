import { frozen } from '../errors/inner.ts'
import { inTheWet } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedCutBackRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'wp-overheated-wire',
    decides: 'cut-back',
    statement: 'Wire whose insulation cracks on slight bending, is weathered through, or has been hot enough to discolour is replaced, not spliced.',
    conditions: [{ field: 'damage', op: '=', values: ['overheated'] }],
    effect: 'requires',
    methods: [],
    values: { replaceIfCracksOnSlightFlex: true },
    source: { status: 'published', source: 'FAA AC 43.13-1B', edition: '1998 with change 1, 2001', clause: 'chapter 11, para 11-97' },
  },
  {
    id: 'cb-bright-metal',
    decides: 'cut-back',
    statement:
      'Cut back until every strand is bright all the way round, then one more short cut; if black or green runs further than the slack allows, replace the run.',
    conditions: [{ field: 'damage', op: '=', values: ['corroded', 'overheated', 'unknown'] }],
    effect: 'requires',
    methods: [],
    values: { extraCutMm: 10, giveUpAfterMm: 300 },
    source: { status: 'common practice', source: "Trade practice; boat owners' reports of about 300 mm without reaching clean wire" },
  },
  {
    id: 'cb-wicking',
    decides: 'cut-back',
    statement:
      'Salt water creeps along the strands under the insulation, so the blackness inside is longer than the damage outside; feel for stiff swollen insulation and open it there first.',
    conditions: [{ field: 'damage', op: '=', values: ['corroded'] }, inTheWet],
    effect: 'informs',
    methods: [],
    values: { expectWicking: true },
    source: { status: 'common practice', source: 'Trade practice; public boating forum reports' },
  },
  {
    id: 'cb-single-or-two-splices',
    decides: 'cut-back',
    statement: 'One damaged point with slack: one splice. Damage along a length: cut it out and put in a jumper with two splices.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { splicesSinglePoint: 1, splicesWithJumper: 2 },
    source: { status: 'published', source: 'CASA AC 21-99', clause: 'section 2 chapter 5 para 2' },
  },
  {
    id: 'cb-no-tension',
    decides: 'cut-back',
    statement: 'No wire may be under tension after the repair; sag between supports stays below about 13 mm unless nothing is near to rub.',
    conditions: [],
    effect: 'forbids',
    methods: [],
    values: { maxDeflectionMm: 12.7, maxDeflectionPrintedIn: 0.5 },
    source: { status: 'published', source: 'FAA AC 43.13-1B', edition: '1998 with change 1, 2001', clause: 'chapter 11, para 11-118' },
  },
])
