import { lapOverlapDiameters, sustainedStrengthShares } from '@strandwise/core/solder'
import type { Lesson } from '../lesson/lesson.ts'
import { quoted, rule } from '../rulesById.ts'
import { sourceText } from '../workingMarkup.ts'
import { areaMm2, diameterMm, enoughMm, interfaceSPerM, lapOhm, layer, ohmPerM, overlapMm, pair, transferMm } from './inCode.ts'
import codeText from './inCode.ts?raw'
import { ladderOhm } from './ladder.ts'
import { mistakes } from './mistakes.ts'
import { asked, made } from './picture.ts'
import { currentA, enough, steps, strengthMm, text } from './steps.ts'
import type { LapGiven } from './whatIf.ts'

const { low, high } = lapOverlapDiameters
const mm = (value: number): string => text(value, 'lengthMm', 2)
const ruleMm = `${mm(low * diameterMm)} to ${mm(high * diameterMm)}`

/** What the slider's chart is drawn from. */
export const lapGiven: LapGiven = { ohmPerM, diameterMm, layerMm: layer.layerMm, layerOhmM: layer.layerOhmM, overlapMm, ruleDiameters: [low, high] }

const slices = 2000
const slicedOhm = ladderOhm({ ...pair, overlapMm, slices })

/** The root of x = coth x by putting it in again and again; no formula of the lap in it. */
function rootOfCoth(): number {
  let x = 1
  for (let round = 0; round < 200; round++) x = (x + 1 / Math.tanh(x)) / 2
  return x
}

const digits = 6

/** "How long must a soldered overlap be?" */
export const overlapLength: Lesson = {
  id: 'overlap-length',
  title: 'How long must a soldered overlap be?',
  summary: `Two ends of a feed lie side by side under solder: how much overlap the current needs, what the workmanship rule asks, and why strength is another matter. From the answer: ${low} to ${high} wire diameters.`,
  scenario: `A narrow workshop (invented for this page): an LED strip along the ceiling is fed at 12 V through a fixed, dry run. A screw went through one wire. It is stranded copper, 32 strands of 0.2 mm, ${text(areaMm2, 'areaMm2')}; the strip draws ${text(currentA, 'currentA', 1)}. You lay the two ends side by side and solder them with tin-lead.`,
  question: 'How many millimetres must they lie against each other?',
  given: [
    { name: 'conductor', text: `${text(areaMm2, 'areaMm2')}, ${text(diameterMm, 'lengthMm')} over its strands` },
    { name: 'current', text: text(currentA, 'currentA', 1) },
    { name: 'solder, Sn60Pb40', text: `${(layer.layerOhmM * 1e9).toPrecision(3)} nΩ m, a layer of ${text(layer.layerMm, 'lengthMm', 1)}` },
    { name: 'bond', text: `${text(layer.bondWidthMm, 'lengthMm', 2)} wide, half a wire diameter` },
  ],
  picture: asked,
  steps,
  answer: {
    picture: made,
    short: `${low} to ${high} wire diameters: ${ruleMm} of overlap here.`,
    words: [
      `The current is content with ${mm(enough)}. The rest is for what you can’t see: solder that did not reach everywhere, a layer that came out thicker, a wire that lay crooked.`,
      `More does not help: strength would ask for ${mm(strengthMm)} and would still not hold for long. Tie the wire, and let the lap carry current only.`,
    ],
  },
  checks: [
    {
      what: 'Overlap of a soldered lap splice',
      status: 'published',
      source: sourceText(lapOverlapDiameters.provenance),
      theirs: `${low} to ${high} wire diameters`,
      ours: `${(enough / diameterMm).toPrecision(2)} diameters are enough for the current`,
      verdict:
        'The standard gives a rule of workmanship and no resistance, so it can’t confirm our figure. It can contradict it, and does not: its least is above what the current needs.',
    },
    {
      what: 'Solder under a load that stays',
      status: 'published',
      source: sourceText(sustainedStrengthShares.provenance),
      theirs: `1/${Math.round(1 / sustainedStrengthShares.tinLead.low)} of the short-time strength after ${sustainedStrengthShares.hours} h`,
      ours: 'no sustained load at all',
      verdict: 'Read in the source, for sleeved tube joints and half tin, half lead. We let a lap carry nothing that stays.',
    },
    {
      what: 'Break-even of like wires, in half transfer lengths',
      status: 'derived',
      source: 'root of x = coth x, found here by putting it in again and again',
      theirs: rootOfCoth().toFixed(digits),
      ours: (enough / transferMm / 2).toFixed(digits),
      verdict: 'Worked out twice by us: it proves the arithmetic, not the model.',
    },
    {
      what: `Resistance of the lap of ${mm(overlapMm)}`,
      status: 'derived',
      source: `the lap cut into ${slices} slices and solved as a ladder of resistors`,
      theirs: `${(slicedOhm * 1e6).toPrecision(digits)} µΩ`,
      ours: `${(lapOhm * 1e6).toPrecision(digits)} µΩ`,
      verdict: 'Another method, the same model of one dimension. We know of no published measurement of such a lap that states bond width and layer.',
    },
  ],
  whatIf: {
    title: 'What if the bond is narrower?',
    asks: 'Move the slider from a thin line of solder to a fillet as wide as the wire, and watch where the lap meets plain wire.',
    label: 'Width of the bond, in wire diameters',
    low: 0.05,
    high: 1,
    step: 0.05,
    start: 0.5,
  },
  mistakes,
  code: {
    text: codeText,
    prints: [
      { name: 'ohmPerM', text: `${ohmPerM.toPrecision(digits)} Ω/m` },
      { name: 'interfaceSPerM', text: `${(interfaceSPerM / 1e6).toPrecision(digits)} MS/m` },
      { name: 'transferMm', text: `${transferMm.toPrecision(digits)} mm` },
      { name: 'enoughMm', text: `${(enoughMm ?? Number.NaN).toPrecision(digits)} mm` },
      { name: 'lapOhm', text: `${(lapOhm * 1e6).toPrecision(digits)} µΩ` },
    ],
  },
  cautions: [
    ...quoted('ca-power-off', 'ca-burns', 'ca-flux-fume', 'ca-lead'),
    {
      text: 'Where the wire moves, shakes or gets wet, don’t make this lap: the plan page tells which joint stands it.',
      source: sourceText(rule('jg-strength-by-table').source),
    },
  ],
}
