import { frozen } from '../errors/inner.ts'
import { whenCrimped, whenSoldered, whenSolderedByHand } from './conditions.ts'
import { crimped, soldered } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedProofByLooksRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'jg-fillet',
    decides: 'proof',
    statement: "Solder must wet every part, fillet along both sides over the whole overlap, and stay thin enough that the strands' outline shows.",
    conditions: [whenSoldered],
    effect: 'requires',
    methods: soldered,
    values: { fillet: 'both sides, full length', outlineVisible: true },
    source: { status: 'published', source: 'NASA-STD-8739.4 with Change 6 (2011), para 19.6.2; US Army STP 11-25R13-SM-TG para A-12' },
  },
  {
    id: 'jg-appearance',
    decides: 'proof',
    statement:
      'Reject: hairline cracks, dull wrinkled surface, exposed strands, scorched insulation, drips or tails. Then take it apart, clean, and do it again with fresh solder and flux.',
    conditions: [whenSolderedByHand],
    effect: 'forbids',
    methods: [],
    values: { reject: ['cracks', 'dull wrinkled surface', 'exposed strands', 'scorched insulation', 'drips, tails'] },
    source: { status: 'published', source: "A helicopter maker's standard practices manual, chapter 4" },
  },
  {
    id: 'me-sleeve-not-cut',
    decides: 'proof',
    statement:
      'After crimping a splice with a sealing sleeve look for cuts in the sleeve; then shrink from the middle. A cut sleeve is not sealed: cut it out.',
    conditions: [{ field: 'method', op: '=', values: ['crimped-and-sealed-butt-splice'] }],
    effect: 'requires',
    methods: ['crimped-and-sealed-butt-splice'],
    values: { sleeveUncut: true },
    source: tradePractice,
  },
  {
    id: 'jg-strength-60',
    decides: 'proof',
    statement: "If a wire and contact pair is not in a pull table, the crimp must reach at least 60 percent of the wire's breaking strength.",
    conditions: [whenCrimped],
    effect: 'limits',
    methods: crimped,
    values: { minShareOfWireStrength: 0.6 },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'crimp tensile paragraph' },
  },
  {
    id: 'pr-visual-list',
    decides: 'proof',
    statement:
      'Look for: no loose strands, no nicks over limit, gap within limits, wetting and fillet or crimp position and bell mouth, no flux, no scorched insulation, sleeve tight with full overlap and adhesive at both ends, ties on both sides, no tension.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: {
      items: [
        'no loose or cut strands over the limit',
        'gap to insulation within limits',
        'wetting and fillet, or crimp position and bell mouth',
        'no flux',
        'no scorched insulation',
        'sleeve tight with full overlap',
        'adhesive at both ends',
        'ties on both sides',
        'no tension',
      ],
    },
    source: { status: 'published', source: 'NASA workmanship sections 2.01, 4.06, 4.07; US Army TM 750-245-4 para 7-10' },
  },
])
