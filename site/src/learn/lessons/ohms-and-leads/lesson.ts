import { maximumResistanceOhmPerM } from '@strandwise/core/tables'
import { bars } from '../../draw/bars.ts'
import { intervals } from '../../draw/intervals.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import {
  allowedDropV,
  allowedOhm,
  byDrop,
  byDropHighV,
  byOhms,
  dropTest,
  leads,
  left,
  leftHighOhm,
  leftLowOhm,
  measuredV,
  meter,
  metreOhm,
  readingOhm,
  shown,
  shownHighOhm,
  testA,
  twoWire,
  uncertaintyV,
  workingA,
} from './inCode.ts'
import codeText from './inCode.ts?raw'
import { mistakes } from './mistakes.ts'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const ohm = (value: number): string => `${figures(value, 2)} Ω`
const volt = (value: number): string => say(value, 'V', 2)
const milli = (value: number): string => `${(1000 * value).toFixed(1)} mV`
const limit = { value: allowedOhm, text: `allowed ${ohm(allowedOhm)}` }
const range = (low: number, high: number): string => `${ohm(low)} to ${ohm(high)}`
const counts = meter.counts * meter.resolution
const accuracy = `${meter.percentOfReading} % and ${meter.counts} counts`
const percentOhm = (meter.percentOfReading / 100) * readingOhm

/** "Does 0.4 Ω prove the joint bad?" */
export const lesson: Lesson = {
  number: 2,
  id: 'ohms-and-leads',
  question: `Does a reading of ${readingOhm} Ω prove the joint bad?`,
  summary:
    'The class takes the number on the meter for the joint. Leads and last digit are larger than the joint: the reading proves neither good nor bad. The drop under load does.',
  scenario: `Invented: the scale under a travelling bee-keeper’s hive reads dead. Its feed has one joint. A hand meter with two leads shows ${readingOhm} Ω over that joint, and someone wants to cut it out.`,
  given: [
    { name: 'the scale draws', text: `${workingA} A` },
    { name: 'drop allowed in the joint', text: volt(allowedDropV) },
    { name: 'so the joint may have', text: ohm(allowedOhm) },
    { name: 'accuracy of the meter', text: `${accuracy} of ${meter.resolution} Ω` },
  ],
  picture: intervals(
    `Reading ${readingOhm} Ω: what is the joint? Allowed are ${allowedOhm} Ω`,
    [{ name: `reading ${ohm(readingOhm)}, the joint`, low: null, high: null, text: '?' }],
    limit,
  ),
  needs: ['hand meter with its leads', 'bench supply of 1 A', 'one metre of 0.5 mm² wire', 'any soldered joint'],
  steps: [
    {
      id: 'tips',
      title: 'The tips together',
      ask: 'You hold the two tips of the meter together, with no joint between. What does it show?',
      options: [
        { text: '0.0 Ω', reply: 'the meter measures its own leads as well, and the two touching tips.' },
        { text: 'Some tenths of an ohm' },
        { text: 'Nothing: there is nothing to measure', reply: 'there are two leads of thin wire and a contact: all of it is in the circuit.' },
      ],
      see: {
        short: `About ${ohm(leads.leadOhm)}, and it changes by ${ohm(leads.leadUncertaintyOhm)} with the grip.`,
        picture: bars('Leads against what the joint may have', [
          { name: 'the two leads', value: leads.leadOhm, text: ohm(leads.leadOhm) },
          { name: 'what the joint may have', value: allowedOhm, text: ohm(allowedOhm), kind: 'solder' },
        ]),
      },
      why: ['The leads alone are larger than a joint is allowed to be. Note what the tips show before you read anything small.'],
      keep: 'Before a small reading, hold the [[tips together]] and take off what they show.',
    },
    {
      id: 'digits',
      title: 'The last digit',
      ask: `The leaflet says ${accuracy}. By how much may the ${readingOhm} Ω be wrong from that alone?`,
      options: [
        { text: `By ${meter.percentOfReading} % of it: ${figures(percentOhm, 1)} Ω`, reply: 'that is the smaller part: the counts come on top.' },
        { text: `By about ${ohm(counts)}` },
        {
          text: `By half of the last digit: ${meter.resolution / 2} Ω`,
          reply: 'half a digit is only the rounding of the display; the leaflet allows three whole ones.',
        },
        { text: 'Not at all: it is a digital meter', reply: 'digits look exact; the leaflet says how far they may be off.' },
      ],
      see: {
        short: `By ${ohm(shownHighOhm - readingOhm)} either way.`,
        values: [
          { name: `${meter.percentOfReading} % of ${readingOhm} Ω`, text: `${figures(percentOhm, 2)} Ω` },
          { name: `${meter.counts} counts of ${meter.resolution} Ω`, text: ohm(counts) },
        ],
        picture: intervals(
          'What the display leaves open',
          [{ name: 'what the tips see', low: shown.low, high: shown.high, text: range(shown.low, shown.high) }],
          limit,
        ),
      },
      why: ['For a small reading the counts are nearly all of it. A reading of three times the counts or less is worth little.'],
      keep: 'The meter is off by [[percent of the reading]] plus [[counts]] times the last digit.',
      working: { id: 'readingInterval', inputs: { reading: readingOhm, ...meter } },
    },
    {
      id: 'left',
      title: 'What is left for the joint',
      ask: 'Take the leads off, keep what may be wrong. What does the reading say of the joint?',
      options: [
        { text: `It has ${readingOhm} Ω: bad`, reply: 'half of that is the leads.' },
        { text: `It has ${figures(readingOhm - leads.leadOhm, 1)} Ω: bad`, reply: 'that is the middle of what it may be; the ends count.' },
        { text: 'Good or bad: it cannot tell' },
        { text: 'It is good, for the leads explain it all', reply: 'they might; the reading does not prove that either.' },
      ],
      see: {
        short: `${range(leftLowOhm, leftHighOhm)}: it cannot tell.`,
        values: [
          { name: `drop at ${workingA} A`, text: `${volt(byOhms.dropLowV)} to ${volt(byOhms.dropHighV)}` },
          { name: 'allowed', text: volt(allowedDropV) },
        ],
        picture: intervals(
          'What the reading leaves for the joint',
          [{ name: 'the joint', low: left.low, high: left.high, text: range(left.low, left.high) }],
          limit,
        ),
      },
      why: ['The interval reaches from below zero, where the leads explain it all, to six times what is allowed. That is no reason to cut out a joint.'],
      keep: 'A reading proves something only if its whole [[interval]] lies on one side of the [[limit]].',
      working: { id: 'twoWireProof', inputs: twoWire },
    },
    {
      id: 'load',
      title: 'Read it under load',
      ask: `You send ${testA} A through the joint and read ${volt(measuredV)} straight over it. What does that prove?`,
      options: [
        { text: 'Nothing: millivolts are too small', reply: 'the meter’s finest range has a digit of 0.1 mV: that is fine enough.' },
        { text: 'The joint is good' },
        { text: 'The joint is bad: there is a drop', reply: 'every joint has one; it counts against what is allowed.' },
        { text: 'Again it cannot tell, for the leads', reply: 'no current flows in the leads of a voltmeter: they drop nothing.' },
      ],
      see: {
        short: `At ${workingA} A at most ${say(byDropHighV, 'V')}: it passes.`,
        values: [
          { name: 'read', text: `${milli(measuredV)} ± ${milli(uncertaintyV)}` },
          { name: 'allowed', text: volt(allowedDropV) },
        ],
        picture: intervals(
          'Drop at the working current',
          [{ name: 'by the drop', low: byDrop.dropLowV, high: byDrop.dropHighV, text: `${volt(byDrop.dropLowV)} to ${volt(byDrop.dropHighV)}` }],
          {
            value: allowedDropV,
            text: `allowed ${volt(allowedDropV)}`,
          },
        ),
      },
      why: ['One current through the joint, two other leads for the volts: the leads drop out. The fault of the hive scale is somewhere else.'],
      keep: 'The [[drop under load]] tells, because no current flows in the leads that [[read it]].',
      working: { id: 'dropTestVerdict', inputs: dropTest },
    },
  ],
  answer: {
    short: 'No: it proves neither a good nor a bad joint.',
    words: [
      `Of ${readingOhm} Ω the leads are ${ohm(leads.leadOhm)} and the last digits ${ohm(counts)} either way; allowed are ${ohm(allowedOhm)}. Read the drop under load.`,
    ],
    picture: intervals(
      'Two ways to read the same joint',
      [
        { name: 'by ohms', low: left.low, high: left.high, text: range(left.low, left.high) },
        {
          name: 'by the drop',
          low: byDrop.dropLowV / workingA,
          high: byDrop.dropHighV / workingA,
          text: range(byDrop.dropLowV / workingA, byDrop.dropHighV / workingA),
        },
      ],
      limit,
    ),
  },
  whatIf,
  checks: [
    {
      kind: 'published',
      what: 'Standard uncertainty that the last digit of a meter brings',
      source: 'WMO',
      title: 'standard uncertainty of a resolution of 0.001 ohm, that is half a count either way',
      verdict: 'The budget takes the same step: a digit is an interval, not a number.',
    },
  ],
  mistakes,
  measurement: {
    needs: ['bench supply set to 1 A', 'one metre of 0.5 mm² copper wire', 'meter with a range of 200 mV'],
    steps: [
      'Read the metre of wire with the ohms range, twice, gripping anew.',
      'Send 1 A through it and read the millivolts at its ends.',
      'Write both in milliohms, side by side.',
    ],
    reads: 'one metre by the drop',
    low: 0.97 * 1000 * metreOhm,
    high: 1000 * maximumResistanceOhmPerM({ standard: 'IEC 60228', areaMm2: 0.5, conductorClass: 5, coating: 'plain' }),
    unit: 'mΩ',
    why: `From 3 % below the copper of that area up to the most that IEC 60228 allows at 20 °C. By ohms the class gets anything from 0 to ${ohm(leftHighOhm)}.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction' },
      { minutes: 20, what: 'Four steps; hold tips together with the class’s own meters in the first' },
      { minutes: 8, what: 'Slider, check, mistakes' },
      { minutes: 15, what: 'The measurement' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: [
      'What lies between the two plugs of the meter?',
      'What would you have to read to cut it out with a good conscience?',
      'Why do the leads not matter for the drop?',
    ],
    expect: ['Nearly all say “bad”.', 'Someone says the meter is broken when the tips show 0.3 Ω.', 'Grips differ by a tenth of an ohm: let them try.'],
  },
  code: { text: codeText, prints: { shownHighOhm, leftLowOhm, leftHighOhm, byDropHighV, metreOhm } },
  cautions: quoted('ca-power-off', 'ca-power-on-for-readings'),
}
