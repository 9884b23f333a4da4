import { frozen } from '../errors/inner.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedReadingMethodsRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'rd-two-wire-floor',
    decides: 'readings',
    statement:
      'Do not judge a joint below a couple of ohms with the ohms range and two leads: the leads alone are about a fifth of an ohm, so a good and a bad splice read alike.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'limits',
    methods: [],
    values: { testLeadOhm: 0.2, twoWireUntrustedBelowOhm: 2, errorShareAt2Ohm: 0.1 },
    source: { status: 'published', source: "Instrument maker's note on low-resistance measurement (four-wire article)" },
  },
  {
    id: 'rd-continuity-cannot',
    decides: 'readings',
    statement: 'A beep or a low ohms reading proves only that something conducts: one strand left of many passes it and still cannot feed a motor or heater.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'limits',
    methods: [],
    values: { oneStrandExampleOhm: 0.1 },
    source: { status: 'published', source: 'Automotive training article on loaded testing' },
  },
  {
    id: 'rd-wiggle',
    decides: 'readings',
    statement:
      'Move, pull lightly and tap the harness every few centimetres while watching the drop under load or a min/max record; a jump marks the place, a steady high value means corrosion or a thin section.',
    conditions: [
      { field: 'damage', op: '=', values: ['broken', 'unknown'] },
      { field: 'situation', op: '=', values: ['intermittent-fault'] },
    ],
    effect: 'requires',
    methods: [],
    values: { stepMm: 50 },
    source: tradePractice,
  },
])
