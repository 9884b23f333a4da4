import { frozen } from '../errors/inner.ts'
import { everyMethod } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * Circuits that a plan refuses, as rules.
 *
 * @source each rule carries its own
 */
export const stopRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'ca-fuel-tank',
    decides: 'cautions',
    statement: 'No repair of wiring inside or on a fuel tank, pump or sender, or in a gas locker, by this plan: replace the part, or have it done.',
    conditions: [{ field: 'circuit', op: '=', values: ['fuel-or-explosive'] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { workAllowed: false },
    source: { status: 'common practice', source: 'Trade practice; 46 CFR 111.60-19(a)' },
  },
  {
    id: 'ca-srs-off-limits',
    decides: 'cautions',
    statement: 'Wires of airbags and belt tensioners (often yellow) are off limits: no probing, no ohmmeter, no test lamp, no splice, no heat.',
    conditions: [{ field: 'circuit', op: '=', values: ['airbag'] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { workAllowed: false, colour: 'yellow', notRead: ['colour'] },
    source: { status: 'published', source: 'Three passenger-car workshop manuals (airbag warnings); vehicle-maker practice' },
  },
  {
    id: 'ca-safety-circuits',
    decides: 'cautions',
    statement:
      "Braking, steering, throttle, restraint and other safety circuits, trailer breakaway and electric brakes among them: the maker's own procedure only, or a new part. A general plan does not release them.",
    conditions: [{ field: 'circuit', op: '=', values: ['safety'] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { makersProcedureOnly: true },
    source: { status: 'common practice', source: 'Vehicle-maker practice' },
  },
  {
    id: 'ca-hv-orange',
    decides: 'cautions',
    statement:
      'Orange cables and high-voltage boxes are off limits. They may stay live up to 10 minutes after shut-off, and the battery itself never switches off.',
    conditions: [{ field: 'circuit', op: '=', values: ['high-voltage'] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { stayLiveS: 600, workAllowed: false },
    source: { status: 'published', source: "A hybrid car maker's emergency response page; an electric car maker's manual" },
  },
  {
    id: 'ca-voltage-limit',
    decides: 'cautions',
    statement: 'Out of scope: anything above 60 V DC or 30 V AC rms.',
    conditions: [{ field: 'supplyV', op: '>', values: [60] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { maxDcV: 60, maxAcRmsV: 30 },
    source: { status: 'published', source: 'Extra-low-voltage limits as tabulated on a public reference page (60 V DC, 42.2 V peak)' },
  },
  {
    id: 'ca-mains',
    decides: 'cautions',
    statement:
      'Mains, shore power and inverter outputs: licensed people only. The plan ends at the low-voltage side, and only if that side is safely separated from the mains.',
    conditions: [{ field: 'circuit', op: '=', values: ['mains'] }],
    effect: 'forbids',
    methods: everyMethod,
    values: { maxDcV: 60, maxAcRmsV: 30 },
    source: { status: 'common practice', source: 'Extra-low-voltage limits as tabulated on a public reference page; trade practice' },
  },
])
