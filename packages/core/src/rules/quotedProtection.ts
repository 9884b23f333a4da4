import { frozen } from '../errors/inner.ts'
import { fuseGiven, onSmallCraft } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedProtectionRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'wp-cfr-150pct',
    decides: 'wire-and-protection',
    statement: 'On US recreational boats below 50 V the fuse or breaker may be up to one and a half times the table current of the wire.',
    conditions: [onSmallCraft, { field: 'supplyV', op: '<', values: [50] }, fuseGiven],
    effect: 'limits',
    methods: [],
    values: { maxRatioToTable: 1.5, supplyBelowV: 50 },
    source: { status: 'published', source: '33 CFR', clause: '183.455(c)(1)' },
  },
  {
    id: 'wp-fuse-near-source',
    decides: 'wire-and-protection',
    statement:
      'Anywhere, not on boats alone: the fuse sits as near the source as it can, within about 200 mm; what lies before it is sheathed and clear of edges.',
    conditions: [{ field: 'fuseDistanceM', op: '>', values: [0.2] }],
    effect: 'limits',
    methods: [],
    values: { maxDistanceMm: 200 },
    source: { status: 'common practice', source: 'Trade practice after the boat rules' },
  },
  {
    id: 'wp-no-fuse',
    decides: 'wire-and-protection',
    statement:
      'A battery-fed wire without any fuse gets one as part of the repair, sized to the thinnest wire after it; cranking cable alone is commonly left without.',
    conditions: [{ field: 'fuse', op: '=', values: ['missing'] }],
    effect: 'requires',
    methods: [],
    values: { fuseRequired: true },
    source: { status: 'common practice', source: 'Trade practice; boat and vessel rules on overcurrent protection' },
  },
  {
    id: 'wp-continuous-75',
    decides: 'wire-and-protection',
    statement: 'Load a fuse continuously to no more than about three quarters of its rating at 25 C.',
    conditions: [fuseGiven],
    effect: 'limits',
    methods: [],
    values: { maxLoadShare: 0.75, referenceC: 25 },
    source: { status: 'common practice', source: 'Fuse application practice' },
  },
  {
    id: 'wp-overload-zone',
    decides: 'wire-and-protection',
    statement:
      'Between 1.1 and 1.35 times its rating a blade fuse may take any time or never open: the wire must carry 1.35 times the fuse rating without passing its insulation limit, or the fuse does not protect it from overload.',
    conditions: [fuseGiven],
    effect: 'requires',
    methods: [],
    values: { zoneRatio: [1.1, 1.35] },
    source: { status: 'from memory', source: 'ISO 8820-3 operating times, as held in the table of fuse bands' },
  },
  {
    id: 'wp-far-end-fault',
    decides: 'wire-and-protection',
    statement:
      'A dead short at the far end must open the fuse quickly: source, both wires hot, fuse holder and joint limit the current. On a long thin run it may sit in the overload zone for minutes and cook the wire.',
    conditions: [fuseGiven],
    effect: 'requires',
    methods: [],
    values: { faultOverFuseMinRatio: 3.5, openWithinS: 5 },
    source: { status: 'common practice', source: 'Trade practice; operating-time table held in the table of fuse bands' },
  },
  {
    id: 'wp-inrush',
    decides: 'wire-and-protection',
    statement:
      'Lamps start at 10 to 15 times, motors at 4 to 8 times and converter inputs at several tens of times the running current; choose the fuse by running current and check its time curve, never by fitting a bigger fuse than the wire allows.',
    conditions: [fuseGiven, { field: 'circuit', op: '=', values: ['motor', 'lighting', 'power'] }],
    effect: 'requires',
    methods: [],
    values: { filamentLampRatio: [10, 15], motorRatio: [4, 8] },
    source: { status: 'common practice', source: 'Trade figures; FAA AC 43.13-1B switch derating uses the same idea' },
  },
])
