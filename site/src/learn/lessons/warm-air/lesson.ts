import { conductorTemperatureBandC, steadyCurrentBandA } from '@strandwise/core/ampacity'
import { bars } from '../../draw/bars.ts'
import { curves, sampled } from '../../draw/chart.ts'
import { wireSections } from '../../draw/sections.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, percent, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import { atKilnA, atWorkshopA, balance, betterAtKilnA, betterLimitC, factor, kilnC, limitC, low, wire, workshopC } from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const amp = (value: number): string => say(value, 'A')
const fanA = 7
const degree = (value: number): string => `${Math.round(value)} °C`
const hot = (currentA: number, ambientC: number) => conductorTemperatureBandC({ ...wire, ambientC, currentA })
const kelvin = bars('Kelvin up to the limit', [
  { name: `in ${workshopC} °C`, value: limitC - workshopC, text: `${limitC - workshopC} K` },
  { name: `in ${kilnC} °C`, value: limitC - kilnC, text: `${limitC - kilnC} K`, kind: 'solder' },
])
const currents = bars('Current that brings the wire to its limit', [
  { name: `in ${workshopC} °C`, value: atWorkshopA, text: amp(atWorkshopA) },
  { name: `in ${kilnC} °C`, value: atKilnA, text: amp(atKilnA), kind: 'solder' },
])
const diameterMm = 2 * Math.sqrt(wire.areaMm2 / Math.PI)
const section = wireSections('The fan’s wire, cut across', [
  { name: `${wire.areaMm2} mm², wall ${wire.insulationThicknessMm} mm`, coreMm: diameterMm, outsideMm: diameterMm + 2 * wire.insulationThicknessMm },
])
const curve = curves(
  {
    title: `Current against air, limit ${limitC} °C`,
    xLabel: 'air, °C',
    yLabel: 'A',
    series: [{ name: 'heat balance', kind: 'main', ...sampled(20, limitC - 1, (ambientC) => steadyCurrentBandA({ ...wire, ambientC, limitC })?.low ?? 0) }],
    limits: [],
    marks: [{ name: `the kiln room, ${kilnC} °C`, x: kilnC }],
  },
  'The current falls slowly at first and ever faster towards the limit.',
)
const benchA = 2.5
const bench = { areaMm2: 0.25, insulationThicknessMm: 0.4, insulationConductivityWPerMK: wire.insulationConductivityWPerMK, ambientC: 22 } as const
const rise = (currentA: number) => {
  const { low: least, high } = conductorTemperatureBandC({ ...bench, currentA })
  return { low: least - bench.ambientC, high: high - bench.ambientC }
}
const [half, full] = [rise(benchA), rise(2 * benchA)]

/** "How much current at 60 °C?" */
export const lesson: Lesson = {
  number: 4,
  id: 'warm-air',
  question: `How much current may the wire carry in air of ${kilnC} °C?`,
  summary:
    'The class reckons in proportion: a quarter of the kelvin, so a quarter of the current. Heat goes with the square of the current, so about half is left.',
  scenario: `Invented: the fan of a pottery’s kiln room hangs where the air is ${kilnC} °C. Its wire was chosen in the workshop, in ${workshopC} °C. Its PVC may become ${limitC} °C.`,
  given: [
    { name: 'wire', text: `${wire.areaMm2} mm², PVC wall ${wire.insulationThicknessMm} mm` },
    { name: 'limit of the insulation', text: `${limitC} °C` },
    { name: `current in ${workshopC} °C`, text: amp(atWorkshopA) },
    { name: 'the fan draws', text: `${fanA} A` },
  ],
  picture: section,
  needs: [`bench supply of ${2 * benchA} A`, `one metre of ${bench.areaMm2} mm² wire`, 'thermometer with a thin probe'],
  steps: [
    {
      id: 'kelvin',
      title: 'What the heat has left',
      ask: `The wire may become ${limitC} °C. In the workshop that left ${limitC - workshopC} K above the air. And in the kiln room?`,
      options: [
        { text: 'A quarter of that' },
        {
          text: 'Half of that, for the air is twice as warm',
          reply: 'degrees Celsius start at freezing water, not at “no warmth”. Only the difference to the limit counts.',
        },
        { text: 'The same: the limit is the insulation’s', reply: 'the limit is, but the air has used up most of the way to it.' },
      ],
      see: { short: `${limitC - kilnC} K in place of ${limitC - workshopC} K: a quarter.`, picture: kelvin },
      why: ['The wire gets rid of its heat only by being warmer than the air. A quarter of the kelvin carries off about a quarter of the heat.'],
      keep: 'What counts is how many [[kelvin]] the air leaves up to the [[limit]].',
    },
    {
      id: 'root',
      title: 'From kelvin to amperes',
      ask: 'A quarter of the heat may be made. How much of the current is that?',
      options: [
        { text: 'A quarter', reply: 'so it would be in proportion; but twice the current makes four times the heat.' },
        { text: 'Half' },
        { text: 'Three quarters: a quarter less', reply: 'that makes more than half of the heat, where a quarter is allowed.' },
        { text: 'None: it is too warm', reply: 'ten kelvin are left, and they carry something.' },
      ],
      see: {
        short: `Half: the root of a quarter is ${figures(factor, 2)}.`,
        values: [{ name: 'share by the root', text: percent(factor) }],
        picture: bars('Heat and current', [
          { name: 'heat allowed', value: factor ** 2, text: percent(factor ** 2), kind: 'solder' },
          { name: 'current allowed', value: factor, text: percent(factor) },
        ]),
      },
      why: ['Heat goes with the square of the current. So the current goes with the root of the heat.'],
      keep: 'Current left = [[root]] of (kelvin left ÷ kelvin in the [[table]]).',
      working: { id: 'ambientFactor', inputs: { limitC, ambientC: kilnC, referenceAmbientC: workshopC } },
    },
    {
      id: 'balance',
      title: 'The heat balance',
      ask: 'The root is a rule. A full heat balance of wire, wall, air and radiation: does it come to the same?',
      options: [
        { text: 'To exactly the same', reply: 'near it. Still air cools less well where the wire is hardly warmer than the air.' },
        { text: 'To a little less' },
        { text: 'To far more, for hot things radiate', reply: 'the surroundings at 60 °C radiate back.' },
      ],
      see: {
        short: `A little less: ${percent(balance)}, ${amp(atKilnA)}.`,
        values: [
          { name: `in ${workshopC} °C`, text: amp(atWorkshopA) },
          { name: `in ${kilnC} °C`, text: amp(atKilnA) },
        ],
        picture: currents,
      },
      why: ['The root is good to a few percent. Where ten kelvin or fewer are left, trust the balance.'],
      keep: 'The rule of the root is good to a few [[percent]].',
      working: { id: 'steadyCurrentA', inputs: { ...wire, ambientC: kilnC, limitC } },
    },
    {
      id: 'better',
      title: 'Another insulation',
      ask: `The fan draws ${fanA} A. The same wire with insulation for ${betterLimitC} °C: what may it carry in ${kilnC} °C?`,
      options: [
        {
          text: `${Math.round((atKilnA * betterLimitC) / limitC)} A: a third more, as the limits say`,
          reply: 'again the kelvin count, not the degrees: 30 K in place of 10 K.',
        },
        { text: `About ${Math.round(betterAtKilnA)} A` },
        { text: 'No more: the copper is the same', reply: 'the copper could; the insulation set the limit.' },
      ],
      see: {
        short: `${amp(betterAtKilnA)}: ${figures(betterAtKilnA / atKilnA, 2)} times as much.`,
        picture: bars(
          `In air of ${kilnC} °C`,
          [
            { name: `limit ${limitC} °C`, value: atKilnA, text: amp(atKilnA) },
            { name: `limit ${betterLimitC} °C`, value: betterAtKilnA, text: amp(betterAtKilnA), kind: 'sleeve' },
          ],
          { value: fanA, text: `the fan, ${fanA} A` },
        ),
      },
      why: ['Three times the kelvin. But look at what the wire ends in: a terminal for less than 90 °C sets the limit for all.'],
      keep: 'In warm air a better [[insulation]] helps more than [[copper]].',
    },
  ],
  answer: {
    short: `About half: ${amp(atKilnA)}.`,
    words: [`A quarter of the kelvin, half of the current. The fan’s ${fanA} A are allowed, with little to spare.`],
    picture: curve,
  },
  whatIf,
  checks: [
    {
      kind: 'published',
      what: 'Factor for PVC of 70 °C in air of 60 °C',
      source: 'IEC 60364-5-52',
      title: 'PVC, 70 C, air at 60 C',
      verdict: 'The root gives the printed factor to its last digit.',
    },
    {
      kind: 'published',
      what: 'Factor for insulation of 75 °C in air of 56 to 60 °C, another country’s code',
      source: 'NFPA 70',
      clause: '310.15(B)(1)',
      title: '75 C insulation, 56 to 60 C, at 60 C',
      verdict: 'The same root, for another limit.',
    },
  ],
  mistakes: [
    {
      title: 'In proportion',
      verdict: 'caution',
      done: 'A quarter of the kelvin, so a quarter of the current: the wire is called unfit.',
      costs: `${amp(atWorkshopA * factor ** 2)} in place of ${amp(atKilnA)}: a thicker wire is bought for nothing.`,
      value: { name: 'reckoned against allowed', text: `${amp(atWorkshopA * factor ** 2)} against ${amp(atKilnA)}` },
      instead: 'Take the root.',
    },
    {
      title: 'The table as it stands',
      verdict: 'unsound',
      done: `The ${amp(atWorkshopA)} of the table are loaded onto the wire in the kiln room.`,
      costs: `The copper comes to ${degree(hot(atWorkshopA, kilnC).low)} to ${degree(hot(atWorkshopA, kilnC).high)}: the PVC softens and ages fast.`,
      value: { name: 'above its limit by', text: `${Math.round(hot(atWorkshopA, kilnC).high - limitC)} K` },
      instead: 'Ask for which air a table holds.',
    },
    {
      title: 'Measured in winter',
      verdict: 'unsound',
      done: 'The room was measured in January, with the kiln cold: 35 °C.',
      costs: `That allows ${amp(low(35, limitC))}; with the kiln on the wire stands ${amp(atKilnA)}.`,
      value: { name: 'too much by', text: percent(low(35, limitC) / atKilnA - 1) },
      instead: 'Take the hottest air that the place sees.',
    },
  ],
  measurement: {
    needs: [`bench supply set to ${benchA} A, then ${2 * benchA} A`, `one metre of ${bench.areaMm2} mm² PVC wire, hung free`, 'thin probe bound to the wire'],
    steps: [
      `Note the air. Send ${benchA} A and wait ten minutes; note the kelvin above the air.`,
      `Double it to ${2 * benchA} A, wait ten minutes, note again.`,
      'Divide the second by the first.',
    ],
    reads: `kelvin at ${2 * benchA} A over kelvin at ${benchA} A`,
    low: full.low / half.low - 0.4,
    high: full.high / half.high + 0.4,
    unit: 'times',
    why: `Twice the current makes four times the heat. A warmer wire stirs the air more, which lowers the ratio, and resists more, which raises it. Expect ${figures(half.high, 1)} K, then ${figures(full.high, 2)} K; probe and draught leave some tenths of the ratio either way.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction' },
      { minutes: 20, what: 'Four steps' },
      { minutes: 8, what: 'Slider, checks, mistakes' },
      { minutes: 25, what: 'The measurement; the sheets while you wait' },
    ],
    ask: ['What is twice as warm as 30 °C?', 'Where else does the square come in?', 'Which part of a circuit stands the least?'],
    expect: ['A quarter gets most votes.', 'Some divide 30 by 60.', 'The wait is long: start it before the slider.'],
  },
  code: { text: codeText, prints: { factor, atWorkshopA, atKilnA, balance, betterAtKilnA } },
  cautions: quoted('ca-power-off', 'ca-burns', 'ca-selv-supply'),
}
