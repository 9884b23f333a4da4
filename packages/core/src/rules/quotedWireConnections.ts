import { frozen } from '../errors/inner.ts'
import { terminalGiven } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedWireConnectionsRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'wp-terminal-derating',
    decides: 'wire-and-protection',
    statement:
      'A terminal is limited by temperature, not by its catalogue current: draw the measured current that brings it from ambient to its limit, then use 80 percent of that current.',
    conditions: [terminalGiven],
    effect: 'limits',
    methods: [],
    values: { deratingFactor: 0.8 },
    source: { status: 'published', source: "IEC 60512-5-2 test 5b as reproduced in connector makers' derating sheets" },
  },
  {
    id: 'me-conditions-overloaded',
    decides: 'wire-and-protection',
    statement: 'A joint that melted from overload is not fixed by a better joint: find the load or wire that was too much first.',
    conditions: [{ field: 'damage', op: '=', values: ['overheated'] }],
    effect: 'requires',
    methods: [],
    values: { findOverloadFirst: true },
    source: { status: 'common practice', source: 'Trade practice; FAA AC 43.13-1B para 11-2 lists overheated connections as findings to trace' },
  },
])
