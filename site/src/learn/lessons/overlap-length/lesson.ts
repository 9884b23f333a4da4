import { filletConductanceSPerM, lapJointResistanceOhm, lapNetworkResistanceOhm } from '@strandwise/core/joint'
import { readingInterval } from '@strandwise/core/meter'
import { lapOverlapDiameters, lapStrengthN, sustainedStrengthShares } from '@strandwise/core/solder'
import { bars } from '../../draw/bars.ts'
import { lapSide } from '../../draw/lap.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, percent, say, span } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import { ladderOhm } from '../../second/ladder.ts'
import { areaMm2, diameterMm, enoughMm, fillet, lapOhm, ohmPerM, overlapMm, pair, plainOhm, strengthMm, transferMm } from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const { low, high } = lapOverlapDiameters
const currentA = 4
const wallMm = 0.6
const mm = (value: number): string => say(value, 'mm', 2)
const ohm = (value: number): string => say(value, 'Ω')
const inDiameters = (value: number): string => `${figures(value / diameterMm, 2)} wire diameters`
const ruleMm = span(low * diameterMm, high * diameterMm, 'mm')
const asked = lapSide(diameterMm, wallMm, overlapMm, true)
const slices = 2000

/** An unbroken film, in ohm m²: from memory; films range over several powers of ten. */
const filmOhmM2 = 1e-8
const dryOhm = lapJointResistanceOhm({ ...pair, overlapMm, interfaceSPerM: filletConductanceSPerM({ ...fillet, filmOhmM2 }) })
const partlyOhm = lapNetworkResistanceOhm({
  ...pair,
  stretches: [
    { lengthMm: overlapMm / 8, interfaceSPerM: pair.interfaceSPerM },
    { lengthMm: (7 * overlapMm) / 8, interfaceSPerM: 0 },
  ],
})
const longMm = 12 * diameterMm
const longOhm = lapJointResistanceOhm({ ...pair, overlapMm: longMm })
const pull = lapStrengthN({ alloy: 'Sn60Pb40', overlapMm, bondWidthMm: fillet.bondWidthMm })
const benchA = 5
const meter = { percentOfReading: 0.5, counts: 3, resolution: 0.0001 }
/** Millivolts as the meter shows them. */
const digits = (valueV: number): number => Math.round(valueV / meter.resolution) * 1000 * meter.resolution
const read = readingInterval({ reading: benchA * lapOhm, ...meter })

/** "How long must a soldered overlap be?" */
export const lesson: Lesson = {
  number: 1,
  id: 'overlap-length',
  question: 'How long must a soldered overlap be?',
  summary:
    'The class expects that longer is better. Two to three wire diameters carry the current; the rule of three to six leaves room for what one cannot see; no length makes a lap that may be pulled for long.',
  scenario: `A narrow workshop, invented: an LED strip along the ceiling is fed at 12 V. A screw went through one wire of its fixed, dry run. You lay the two ends side by side and solder them.`,
  given: [
    { name: 'wire', text: `32 strands of 0.2 mm, ${say(areaMm2, 'mm²')}, ${say(diameterMm, 'mm')} across` },
    { name: 'current', text: `${currentA} A` },
    { name: 'solder', text: `Sn60Pb40, ${say(fillet.solderOhmM * 1e9, 'nΩ m')}` },
    { name: 'fillet of solder', text: `${mm(fillet.bondWidthMm)} wide, ${say(fillet.gapMm, 'mm', 1)} between the wires` },
  ],
  picture: asked,
  needs: ['iron and electrical solder', 'stranded wire of 1 mm²', `bench supply of ${benchA} A`, 'meter with a digit of 0.1 mV'],
  steps: [
    {
      id: 'crossing',
      title: 'Where the current crosses',
      ask: 'The current comes along one wire and leaves along the other. Where in the overlap does it cross the solder?',
      options: [
        {
          text: 'Evenly, over the whole overlap',
          reply: 'so it would if wire had no resistance. Crossing early saves wire, crossing late saves wire on the other side: the ends win.',
        },
        { text: 'In the middle', reply: 'nothing draws it there; each extra millimetre in one wire alone costs.' },
        { text: 'Most of it near the two ends' },
        { text: 'Only through the strands that touch', reply: 'with solder between them strands need not touch; a layer of a tenth of a millimetre is short.' },
      ],
      picture: asked,
      see: {
        short: `Most of it crosses within ${mm(transferMm)} of an end.`,
        values: [
          { name: 'transfer length', text: mm(transferMm) },
          { name: 'in diameters', text: figures(transferMm / diameterMm, 2) },
        ],
        picture: lapSide(diameterMm, wallMm, 2 * transferMm),
      },
      why: ['Between the two ends the current is shared by two wires side by side. A longer middle changes little for the current.'],
      keep: 'Most of the current crosses within [[one diameter]] of each end; the [[middle]] adds little.',
      working: { id: 'transferLengthMm', inputs: pair },
    },
    {
      id: 'enough',
      title: 'Enough for the current',
      ask: 'From which overlap on does the lap resist no more than plain wire of that length?',
      options: [
        { text: 'About half a diameter', reply: 'there the current has to squeeze through a short line of solder: more than plain wire.' },
        { text: 'About two to three diameters' },
        { text: 'About ten diameters', reply: 'longer is not better for the current: it has crossed long before.' },
        {
          text: 'Never: solder resists nine times as much as copper',
          reply: 'solder does, but the current has only a tenth of a millimetre of it to cross, over a wide strip.',
        },
      ],
      see: {
        short: `From ${mm(enoughMm)} on: ${inDiameters(enoughMm)}.`,
        values: [
          { name: 'one metre of wire', text: say(ohmPerM, 'Ω') },
          { name: 'overlap that equals plain wire', text: mm(enoughMm) },
        ],
        picture: lapSide(diameterMm, wallMm, enoughMm),
      },
      why: ['A longer lap is two wires in parallel, so it resists less than one wire. A shorter one is ruled by the solder that has to be crossed.'],
      keep: 'For the current alone [[two to three]] wire diameters are enough.',
      working: { id: 'breakEvenOverlapMm', inputs: pair },
    },
    {
      id: 'made',
      title: 'The lap you make',
      ask: `The workmanship rule asks for ${low} to ${high} diameters. You take four, ${mm(overlapMm)}. What does the lap resist, against plain wire that long?`,
      options: [
        { text: 'Ten times as much', reply: 'that is a dry or cracked joint, never the solder’s own resistance.' },
        { text: 'About twice as much', reply: 'so people expect of a joint; a wetted lap is no weak place for current.' },
        { text: 'Less than the wire' },
      ],
      see: {
        short: `${ohm(lapOhm)}: ${percent(lapOhm / plainOhm)} of plain wire.`,
        values: [
          { name: `drop at ${currentA} A`, text: say(lapOhm * currentA, 'V') },
          { name: `heat at ${currentA} A`, text: say(lapOhm * currentA ** 2, 'W') },
        ],
        picture: bars('The lap against plain wire', [
          { name: `lap of ${mm(overlapMm)}`, value: lapOhm, text: ohm(lapOhm), kind: 'solder' },
          { name: 'plain wire of that length', value: plainOhm, text: ohm(plainOhm) },
        ]),
      },
      why: ['A lap that reads higher than its wire is not wetted, or it is cracked. That is the test: compare it with as much wire beside it.'],
      keep: 'A good lap resists [[no more]] than its own length of [[wire]].',
      working: { id: 'lapJointResistanceOhm', inputs: { ...pair, overlapMm } },
    },
    {
      id: 'strength',
      title: 'Strength is another matter',
      ask: 'How long would the overlap have to be to hold as much as the wire, when it is pulled once?',
      options: [
        { text: 'Four diameters, as made', reply: 'solder is far softer than copper in shear.' },
        { text: `About ${Math.round(strengthMm / diameterMm)} diameters` },
        { text: 'Any length: solder is stronger than copper', reply: 'it holds about a sixth as much per square millimetre.' },
      ],
      see: {
        short: `${mm(strengthMm)}, ${inDiameters(strengthMm)}, for one short pull.`,
        values: [
          { name: 'your lap, pulled once', text: say(pull.shortTimeN, 'N', 2) },
          { name: 'your lap, for months', text: say(pull.sustainedN, 'N', 2) },
        ],
        picture: lapSide(diameterMm, wallMm, strengthMm),
      },
      why: ['Under a load that stays, solder creeps and lets go. So no overlap is long enough to hang a wire on: tie the wire on both sides.'],
      keep: 'More overlap only adds [[strength]] for one pull; a lap carries [[no lasting pull]].',
      working: { id: 'lapStrengthN', inputs: { alloy: 'Sn60Pb40', overlapMm, bondWidthMm: fillet.bondWidthMm } },
    },
  ],
  answer: {
    short: `${low} to ${high} wire diameters: ${ruleMm} here.`,
    words: [`The current is content with ${mm(enoughMm)}. The rest is for what you cannot see: solder that did not reach, a thick layer, a crooked wire.`],
    picture: lapSide(diameterMm, wallMm, overlapMm),
  },
  whatIf,
  checks: [
    {
      kind: 'published',
      what: 'Least overlap of a soldered lap, in wire diameters',
      source: 'NASA-STD-8739.4',
      title: 'least overlap of a soldered lap in wire diameters',
      verdict: `The rule is kept as printed. It prints no resistance; its least lies above the ${figures(enoughMm / diameterMm, 2)} diameters that the current needs, so it does not contradict us.`,
    },
    {
      kind: 'derived',
      what: `Resistance of the lap of ${mm(overlapMm)}`,
      method: `the lap cut into ${slices} slices and solved as a ladder of resistors`,
      theirs: 1e6 * ladderOhm({ ...pair, overlapMm, slices }),
      ours: 1e6 * lapOhm,
      unit: 'µΩ',
      verdict: 'The closed form and the ladder agree. No published measurement of such a lap is known to us.',
    },
  ],
  mistakes: [
    {
      title: 'A dry lap',
      verdict: 'unsound',
      done: 'The wires were dark and got no flux. The solder lies on a film and never wetted it.',
      costs: `${figures(dryOhm / plainOhm, 2)} times plain wire.`,
      value: { name: `the dry lap, film of 10⁻⁸ Ω m² (from memory)`, text: ohm(dryOhm) },
      instead: 'Scrape to bright metal, flux, heat the wires until they melt the solder themselves.',
    },
    {
      title: 'Wetted at one end only',
      verdict: 'caution',
      done: 'The iron was taken off early: an eighth of the overlap is wetted, the rest is bare.',
      costs: `${figures(partlyOhm / plainOhm, 2)} times plain wire, and a hand meter does not see it.`,
      value: { name: 'wetted over an eighth', text: ohm(partlyOhm) },
      instead: 'Look for a fillet along both sides, over the whole overlap.',
    },
    {
      title: 'Too long',
      verdict: 'caution',
      done: `To be safe the overlap was made 12 diameters long, ${mm(longMm)}.`,
      costs: `${percent(longOhm / ((ohmPerM * longMm) / 1000))} of plain wire that long: what two wires side by side have anyway.`,
      value: { name: `lap of ${mm(longMm)}`, text: ohm(longOhm) },
      instead: `Stop at ${high} diameters: more is stiff, and moves the bend to the edge of the insulation.`,
    },
    {
      title: 'Counting on solder for pull',
      verdict: 'unsound',
      done: 'The lamp hangs on the joint.',
      costs: `One ${Math.round(1 / sustainedStrengthShares.tinLead.low)}th of its strength is left after ${sustainedStrengthShares.hours.toLocaleString('en').replace(',', ' ')} hours.`,
      value: { name: 'what it holds for long', text: say(pull.sustainedN, 'N', 2) },
      instead: 'Tie the wire on both sides of the joint, with slack between.',
    },
  ],
  measurement: {
    needs: ['your lap', `bench supply set to ${benchA} A`, 'meter with a digit of 0.1 mV', 'two needles as probes'],
    steps: [
      `Send ${benchA} A through the wire and the lap.`,
      'Put the needles on the wire at both ends of the overlap and read.',
      'Put them as far apart on plain wire beside it and read again.',
      'Read a lap that was soldered cold and without flux the same way.',
    ],
    reads: `drop of a good lap at ${benchA} A`,
    low: digits(Math.max(0, read.low)),
    high: digits(read.high),
    unit: 'mV',
    why: `The lap has ${say(benchA * lapOhm, 'V', 2)}, plain wire ${say(benchA * plainOhm, 'V', 2)}, and the meter may be off by three digits: it cannot tell these two apart. A dry lap reads ${say(benchA * dryOhm, 'V', 2)}: that it tells at once.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question; each writes a prediction on the handout' },
      { minutes: 20, what: 'Four steps: vote, see, why' },
      { minutes: 8, what: 'The slider, check and mistakes' },
      { minutes: 25, what: 'Solder a lap and measure it' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: ['Why do you expect longer to be better? Better for what?', 'What would you see if the solder had not reached?', 'Where would you tie this wire?'],
    expect: [
      'Most votes go to ten diameters: they mix up current and strength.',
      'Some hold that solder is a bad conductor, so the joint must be bad.',
      `Laps that read more than ${figures(digits(read.high), 1)} mV at ${benchA} A: nearly always too little heat.`,
    ],
  },
  code: { text: codeText, prints: { ohmPerM, transferMm, enoughMm, lapOhm, strengthMm } },
  cautions: quoted('ca-power-off', 'ca-burns', 'ca-eyes-solder', 'ca-eyes-cutting', 'ca-flux-fume', 'ca-lead'),
}
