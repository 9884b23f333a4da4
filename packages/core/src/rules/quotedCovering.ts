import { frozen } from '../errors/inner.ts'
import { inTheWet, terminalGiven, whenSleeved } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedCoveringRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'co-size-rule',
    decides: 'covering',
    statement: 'Choose sleeve larger as supplied than the largest thing it must pass, and tight after shrinking.',
    conditions: [whenSleeved],
    effect: 'requires',
    methods: [],
    values: { suppliedOver: 'largest diameter to pass', tightAfter: true },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 9.8.1' },
  },
  {
    id: 'co-seal-range',
    decides: 'covering',
    statement:
      "At a sealed connector the covered wire must still pass the housing's hole and lie inside the seal's diameter range: no sleeve, tape or splice inside the seal.",
    conditions: [terminalGiven, inTheWet],
    effect: 'requires',
    methods: [],
    values: { insideSealRange: true },
    source: tradePractice,
  },
  {
    id: 'co-recovery-margin',
    decides: 'covering',
    statement:
      'A sleeve that must seal is fully recovered smaller than the smallest thing it grips: keep its recovered inside at no more than 80 percent of that diameter, and its supplied inside 10 to 20 percent over the largest, so the wall is under tension but the tube goes on.',
    conditions: [whenSleeved],
    effect: 'limits',
    methods: [],
    values: { recoveredMaxShareOfSmallest: 0.8, suppliedMinRatioToLargest: [1.1, 1.2] },
    source: { status: 'common practice', source: "Tubing makers' guidance (usual)" },
  },
  {
    id: 'co-overlap-min',
    decides: 'covering',
    statement: 'Cover the joint and both cut edges of insulation by at least two outer wire diameters on each side.',
    conditions: [whenSleeved],
    effect: 'limits',
    methods: [],
    values: { overlapEachSideMinDiameters: 2 },
    source: { status: 'published', source: "A helicopter maker's standard practices manual figure 4-14 (two wire insulations)" },
  },
  {
    id: 'co-slide-first',
    decides: 'covering',
    statement: "Thread the sleeve on before joining and park it far enough away that the joint's heat cannot shrink it.",
    conditions: [whenSleeved],
    effect: 'requires',
    methods: [],
    values: { beforeJoining: true },
    source: { status: 'published', source: 'US Army TM 9-6115-604-12; TM 9-4120-367-14' },
  },
])
