import { frozen } from '../errors/inner.ts'
import { withInsertedLength } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedWireRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'wp-motor-stall',
    decides: 'wire-and-protection',
    statement:
      'A stalled motor (jammed pump, frozen gate) draws several times its running current: the fuse must open before wire, joint or motor burns, or the motor needs its own thermal cut-out. A fuse that is sure to hold the running current may never open at stall on a long thin wire.',
    conditions: [{ field: 'circuit', op: '=', values: ['motor'] }],
    effect: 'requires',
    methods: [],
    values: { stallMustOpen: true },
    source: { status: 'common practice', source: 'Trade practice; public pages on motor overload protection' },
  },
  {
    id: 'wp-cca',
    decides: 'wire-and-protection',
    statement:
      'Copper-clad aluminium looks like copper and is sold as such: light in the hand, silvery at a clean cut, about one and a half times the resistance. Treat it as aluminium: not for splices here, not in the wet; replace it with copper.',
    conditions: [{ field: 'situation', op: '=', values: ['light-or-silvery-wire'] }],
    effect: 'requires',
    methods: [],
    values: { resistanceRatioToCopper: [1.5, 1.65], notRead: ['resistanceRatioToCopper'] },
    source: { status: 'published', source: 'Public pages on copper-clad aluminium' },
  },
  {
    id: 'wp-same-gauge',
    decides: 'wire-and-protection',
    statement: 'An inserted piece has the same gauge or larger and an insulation of at least the same temperature class and oil resistance.',
    conditions: [withInsertedLength],
    effect: 'requires',
    methods: [],
    values: { minAreaRatio: 1 },
    source: { status: 'published', source: 'US Army TM 9-6115-604-12 (same AWG); FAA AC 43.13-1B para 11-97 (equivalent wire)' },
  },
  {
    id: 'wp-conflict-drop-budget',
    decides: 'wire-and-protection',
    statement:
      'Budgets for the same circuit differ: 2 percent for aircraft main feeds, 3 percent for boat critical circuits, about 3.6 percent for aircraft loads, 7 percent for military external power, 10 percent for boat comfort loads, 15 percent for lamps under one vehicle code. Use the budget that the person gives; else 3 percent for critical loads, pumps, electronics and main feeds and 10 percent for the rest, and always show which one was used.',
    conditions: [],
    effect: 'limits',
    methods: [],
    values: { optionsShare: [0.02, 0.03, 0.036, 0.07, 0.1, 0.15], defaultCriticalShare: 0.03, defaultOtherShare: 0.1 },
    source: { status: 'common practice', source: 'FAA, ABYC, ISO 10133, MIL-STD-704F, California code' },
    conflictsWith: ['wp-faa-main-2pct', 'wp-abyc-3pct', 'wp-iso-3pct', 'wp-faa-drop-continuous', 'wp-mil-704-28v', 'wp-abyc-10pct', 'rd-bulb-voltage'],
  },
])
