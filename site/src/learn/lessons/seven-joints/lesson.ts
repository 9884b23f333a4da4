import { lapJointResistanceOhm, lapNetworkResistanceOhm } from '@strandwise/core/joint'
import { readingInterval } from '@strandwise/core/meter'
import { intervals } from '../../draw/intervals.ts'
import { lapSide } from '../../draw/lap.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import { ladderOhm } from '../../second/ladder.ts'
import { bare, cutOhm, dryOhm, goodOhm, looseOhm, ohmPerM, oneEndOhm, overlapMm, plainV, read, spanMm, testA, wetted, wireOhm } from './inCode.ts'
import codeText from './inCode.ts?raw'
import { joints } from './joints.ts'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const milli = (value: number): string => `${figures(1000 * value, 2)} mV`
const range = ({ low, high }: { readonly low: number; readonly high: number }): string => `${milli(low)} to ${milli(high)}`
const plain = { value: plainV, text: `plain wire ${milli(plainV)}` }
const overlapsGood = ({ low, high }: { readonly low: number; readonly high: number }): boolean => low <= read(goodOhm).high && high >= read(goodOhm).low
const alike = joints.filter(({ ohm }) => overlapsGood(read(ohm)))
const apart = joints.filter(({ ohm }) => !overlapsGood(read(ohm)))
const names = (list: readonly { readonly name: string }[]): string => list.map(({ name }) => name).join(', ')
const rows = (list: readonly { readonly name: string; readonly ohm: number }[]) => list.map(({ name, ohm }) => ({ name, ...read(ohm), text: range(read(ohm)) }))
const alikePicture = intervals(`Three that read alike: ${names(alike)}`, rows(alike), plain)
const apartPicture = intervals(`The four that stand out, and P`, rows([...joints.slice(0, 1), ...apart]), plain)
const byOhms = readingInterval({ reading: 0.2, percentOfReading: 0.8, counts: 3, resolution: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 })
const asked = intervals('Seven joints: which is the good one?', [{ name: joints.map(({ name }) => name).join(', '), low: null, high: null, text: '?' }], plain)
const diameterMm = overlapMm / 4
const workingA = 4
const pair = { conductorsOhmPerM: [ohmPerM, ohmPerM], interfaceSPerM: wetted.interfaceSPerM } as const
const networkOhm = lapNetworkResistanceOhm({ conductorsOhmPerM: pair.conductorsOhmPerM, stretches: [wetted, bare] })
const spanLongMm = 200
const longRatio = (dryOhm + wireOhm(spanLongMm - spanMm)) / wireOhm(spanLongMm)

/** "Which is which, from the readings?" */
export const lesson: Lesson = {
  number: 8,
  id: 'seven-joints',
  question: 'One joint done well and six done badly: which is which?',
  summary:
    'The class expects the meter to sort them. By ohms all seven read alike; by the drop four stand out and three still read alike; eye and hand tell these.',
  scenario: `Invented: a box for the class holds seven joints of the same wire, ${joints[0].name} to ${joints[6].name}. One was done well, six were spoilt on purpose. A meter, a supply, your eyes and your hands are allowed.`,
  given: [
    { name: 'wire', text: `1 mm², ${say(ohmPerM, 'Ω')} a metre` },
    { name: 'needles', text: `${spanMm} mm apart, the joint between them` },
    { name: 'current through the joint', text: `${testA} A` },
    { name: 'plain wire would drop', text: milli(plainV) },
  ],
  picture: asked,
  needs: ['seven joints as described in the notes', 'bench supply of 2 A', 'meter with a digit of 0.1 mV', 'two needles as probes'],
  steps: [
    {
      id: 'ohms',
      title: 'By ohms',
      ask: 'You read each with the ohms range and two leads. How many of the bad ones stand out?',
      options: [
        { text: 'All six', reply: 'the worst of them has a few thousandths of an ohm; the leads have two tenths.' },
        { text: 'The worst two or three', reply: 'even these stay far below what the last digits leave open.' },
        { text: 'None' },
      ],
      see: {
        short: 'None: each reads 0.2 Ω, as the tips alone do.',
        values: [
          { name: 'left open by the reading', text: `up to ${figures(byOhms.high, 2)} Ω` },
          { name: 'the worst joint', text: say(Math.max(...joints.map(({ ohm }) => ohm)), 'Ω', 2) },
        ],
      },
      why: ['For joints the ohms range of a hand meter is blind. That is lesson 2 once more.'],
      keep: 'With two leads and ohms [[none]] of the joints can be told from another.',
      working: { id: 'readingInterval', inputs: { reading: 0.2, percentOfReading: 0.8, counts: 3, resolution: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 } },
    },
    {
      id: 'drop',
      title: 'By the drop',
      ask: `${testA} A flow. Needles ${spanMm} mm apart read the millivolts over each joint. How many stand out now?`,
      options: [
        { text: 'All six', reply: 'two of them conduct as well as the good one, or nearly.' },
        { text: `${['None', 'One', 'Two', 'Three', 'Four', 'Five', 'Six'][apart.length]}` },
        { text: 'None: millivolts are too small', reply: 'the digit is 0.1 mV, and a bad joint drops several millivolts.' },
      ],
      see: { short: `${['None', 'One', 'Two', 'Three', 'Four', 'Five', 'Six'][apart.length]}: ${names(apart)}.`, picture: apartPicture },
      why: ['Compare each with plain wire beside it. What drops more than its wire, by more than the meter’s error, is bad.'],
      keep: 'Over the joint and over as much plain [[wire]]: what drops [[more]] is bad.',
      working: { id: 'dropTestVerdict', inputs: { measuredV: dryOhm * testA, uncertaintyV: 0.0003, testA, workingA, allowedDropV: 2 * plainV } },
    },
    {
      id: 'alike',
      title: 'Three that read alike',
      ask: `${names(alike)} read alike. What tells them apart?`,
      options: [
        { text: 'A better meter', reply: 'for one of the two bad ones it would; the other conducts exactly as well as the good one.' },
        { text: 'The eye' },
        { text: 'Nothing: they are equally good', reply: 'they conduct equally well today. One has burnt insulation, one hangs on an eighth of its solder.' },
      ],
      see: { short: `The eye: ${alike.map(({ name, is }) => `${name} ${is}`).join(', ')}.`, picture: alikePicture },
      why: [alike.map(({ name, looks }) => `${name}: ${looks}.`).join(' ')],
      keep: 'A reading does not see burnt [[insulation]] or missing solder: [[look]].',
    },
    {
      id: 'month',
      title: 'A month later',
      ask: 'The loose crimp U is put into service and read again after a month. What does it read?',
      options: [
        { text: 'The same: nothing moves', reply: 'under no pressure a film grows between barrel and strands.' },
        { text: 'More: here four times as much' },
        { text: 'Less: it has bedded in', reply: 'a tight contact beds in; a loose one oxidises.' },
      ],
      see: {
        short: `V is U a month later: ${milli(4 * looseOhm * testA)} in place of ${milli(looseOhm * testA)}.`,
        picture: intervals('The loose crimp, new and a month old', rows(joints.slice(5)), plain),
      },
      why: ['Four times is invented, for the set; that it rises is not. A tug on the new crimp would have told it at once.'],
      keep: 'A loose joint reads [[worse]] with time: give each a light [[tug]] when it is new.',
    },
  ],
  answer: {
    short: `By the drop ${names(apart)} are out; ${names(alike)} read alike; by eye only P is left.`,
    words: ['Read, look, pull: none of the three is enough alone.'],
    picture: lapSide(diameterMm, 0.6, overlapMm),
  },
  whatIf,
  checks: [
    {
      kind: 'derived',
      what: 'Lap that is wetted over an eighth at one end',
      method: 'the wetted eighth cut into 2000 slices as a ladder of resistors, and plain wire for the rest',
      theirs: 1e6 * (ladderOhm({ ...pair, overlapMm: wetted.lengthMm, slices: 2000 }) + wireOhm(bare.lengthMm)),
      ours: 1e6 * networkOhm,
      unit: 'µΩ',
      verdict: 'The network and the ladder agree.',
    },
    {
      kind: 'derived',
      what: `Good lap of ${say(overlapMm, 'mm', 2)}`,
      method: 'the lap cut into 2000 slices as a ladder of resistors',
      theirs: 1e6 * ladderOhm({ ...pair, overlapMm, slices: 2000 }),
      ours: 1e6 * lapJointResistanceOhm({ ...pair, overlapMm }),
      unit: 'µΩ',
      verdict: 'Closed form and ladder agree. No set of spoilt joints with its readings is published that we know of.',
    },
  ],
  mistakes: [
    {
      title: 'Needles too far apart',
      verdict: 'caution',
      done: `To be quick the probes are put ${spanLongMm} mm apart over the dry joint Q.`,
      costs: `It reads ${figures(longRatio, 2)} times plain wire in place of ${figures(dryOhm / wireOhm(spanMm), 2)}: the wire hides it.`,
      value: { name: 'ratio over the long span', text: figures(longRatio, 2) },
      instead: 'Close to the joint, on bare metal.',
    },
    {
      title: 'It reads well, so it is well',
      verdict: 'unsound',
      done: 'T reads like plain wire and goes into service, its insulation brown and hard.',
      costs: `It drops ${milli(goodOhm * testA)}, exactly as the good one. It cracks at the first bend.`,
      value: { name: 'difference to the good one', text: '0 mV' },
      instead: 'Look before you read.',
    },
    {
      title: 'Strands lost in stripping',
      verdict: 'unsound',
      done: 'S was soldered well, but the cutter took 29 of 32 strands beside it.',
      costs: `${figures(cutOhm / wireOhm(spanMm), 2)} times plain wire, ${say((cutOhm - wireOhm(spanMm)) * workingA ** 2, 'W', 2)} on 6 mm at ${workingA} A, and it breaks when it is bent.`,
      value: { name: 'drop at 2 A', text: milli(cutOhm * testA) },
      instead: 'Count the strands after stripping; cut again if one is gone.',
    },
  ],
  measurement: {
    needs: ['the good joint of the set', `bench supply set to ${testA} A`, 'meter with a digit of 0.1 mV, two needles'],
    steps: [
      `Read over ${spanMm} mm with the joint between the needles, three times.`,
      `Read over ${spanMm} mm of plain wire.`,
      'Mark on a line from 0 to 10 mV what each of the seven reads.',
    ],
    reads: 'the good joint',
    low: 1000 * Math.max(0.0001, read(goodOhm).low),
    high: 1000 * read(goodOhm).high,
    unit: 'mV',
    why: `The reading alone may be off by three digits. Plain wire: ${milli(plainV)}. The one-ended R lies at ${milli(oneEndOhm * testA)}, inside.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The box goes round; each writes a guess' },
      { minutes: 22, what: 'Four steps' },
      { minutes: 8, what: 'Slider, checks, mistakes' },
      { minutes: 25, what: 'The class measures the set' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: [
      'Which would you fit on a bicycle you ride at night?',
      'What does a reading not know?',
      'Which fault would you rather have: one that reads badly, or one that reads well?',
    ],
    expect: [
      `The set to make: ${joints.map(({ name, is }) => `${name} ${is}`).join('; ')}.`,
      'All want to begin with the ohms range. Let them.',
      'T is fitted by most until someone bends it.',
    ],
  },
  code: { text: codeText, prints: { goodOhm, oneEndOhm, dryOhm, cutOhm, looseOhm } },
  cautions: quoted('ca-power-off', 'ca-burns', 'ca-power-on-for-readings', 'ca-eyes-cutting', 'ca-pvc-fume', 'ca-flux-fume'),
}
