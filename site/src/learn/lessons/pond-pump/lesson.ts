import { conductorTemperatureC, timeToTemperatureS } from '@strandwise/core/ampacity'
import { fuseProtectsWire } from '@strandwise/core/protection'
import { fuseBands } from '@strandwise/core/tables'
import { bars } from '../../draw/bars.ts'
import { circuitLine } from '../../draw/circuit.ts'
import { intervals } from '../../draw/intervals.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import { warmingS } from '../../second/warming.ts'
import {
  atJam,
  atShort,
  bandOf,
  fuseA,
  jammed,
  jammedA,
  jammedHighC,
  limitC,
  pair,
  pumpA,
  shortA,
  smallerA,
  wire,
  wireA,
  wireAtJamS,
  wireAtShortS,
  zoneHighA,
  zoneLowA,
} from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

/** Multiple of its rating from which the fuse is sure to open. */
const sureAt = bandOf(fuseA).find(({ longestS }) => longestS !== null)?.multiple ?? Number.NaN
const amp = (value: number): string => say(value, 'A')
const second = (value: number): string => say(value, 's', 2)
const degree = (value: number): string => `${Math.round(value)} °C`
const zone = `${amp(zoneLowA)} to ${amp(zoneHighA)}`
const asked = circuitLine('The pump’s circuit', ['battery +', `fuse ${fuseA} A`, 'pump +'], ['battery −', 'pump −'], [])
const zonePicture = intervals(
  `Where nothing guards the wire: ${zone}`,
  [
    { name: 'the wire stands it', low: 0, high: wireA, text: `up to ${amp(wireA)}` },
    { name: 'too hot, fuse may stay closed', low: zoneLowA, high: zoneHighA, text: zone },
    { name: 'fuse opens in time', low: zoneHighA, high: 40, text: `from ${amp(zoneHighA)}` },
  ],
  { value: fuseA, text: `fuse ${fuseA} A` },
)
const larger = 20
const largerZone = fuseProtectsWire({ ...pair, ratedA: larger, band: bandOf(larger) }).unprotected[0]
const atRatingC = conductorTemperatureC({ ...wire, currentA: fuseA })
const bundledA = 12
const checkedA = 25
const benchA = 5
const benchC = 45
const bench = { areaMm2: 0.14, insulationThicknessMm: 0.35, insulationConductivityWPerMK: wire.insulationConductivityWPerMK, ambientC: 22 } as const
const benchS = timeToTemperatureS({ ...bench, currentA: benchA, wantedC: benchC }) ?? 0

/** "Does the fuse guard the wire?" */
export const lesson: Lesson = {
  number: 6,
  id: 'pond-pump',
  question: 'Does the fuse guard the wire?',
  summary:
    'The class trusts a fuse that opens at once in a short circuit. Between what the wire stands and what is sure to open the fuse lies a zone in which the wire cooks.',
  scenario: `Invented: a duck pond’s pump draws ${pumpA} A. Its wire of ${wire.areaMm2} mm² is guarded by a blade fuse of ${fuseA} A. When duckweed jams it, the pump draws ${jammedA} A, quietly.`,
  given: [
    { name: 'fuse', text: `blade, ${fuseA} A` },
    { name: 'the wire may carry', text: amp(wireA) },
    { name: 'limit of its PVC', text: `${limitC} °C` },
    { name: 'the jammed pump draws', text: `${jammedA} A` },
    { name: 'a short circuit draws', text: `${shortA} A` },
  ],
  picture: asked,
  needs: [`bench supply of ${benchA} A`, `half a metre of ${bench.areaMm2} mm² wire`, 'thermometer with a thin probe', 'some old blade fuses to look at'],
  steps: [
    {
      id: 'short',
      title: 'A dead short',
      ask: `The wires touch and ${shortA} A flow. The copper passes ${limitC} °C after ${second(wireAtShortS)}. When does the fuse open?`,
      options: [
        { text: 'Within a tenth of a second' },
        { text: 'After about a second', reply: 'at six times its rating a blade fuse opens ten times sooner.' },
        { text: 'It cannot be told', reply: 'the exact moment cannot, but the latest can.' },
      ],
      see: {
        short: `At the latest after ${second(atShort.longestS ?? 0)}: the wire is safe.`,
        picture: bars('Wire and fuse in a short circuit', [
          { name: 'fuse, at the latest', value: atShort.longestS ?? 0, text: second(atShort.longestS ?? 0), kind: 'solder' },
          { name: `wire, to ${limitC} °C`, value: wireAtShortS, text: second(wireAtShortS) },
        ]),
      },
      why: ['Short circuits are what a fuse is made for. It is the case that everyone tests, and the reason why everyone trusts it.'],
      keep: 'In a [[short circuit]] the fuse is faster than the wire.',
    },
    {
      id: 'jam',
      title: 'The jammed pump',
      ask: `Now the pump jams and draws ${jammedA} A, a third more than the fuse’s rating. When does the fuse open?`,
      options: [
        { text: 'At once: it is above the rating', reply: 'the rating is what it carries, not what opens it.' },
        { text: 'Within ten minutes', reply: `that holds only from ${sureAt} times its rating on; here it is ${figures(jammedA / fuseA)} times.` },
        { text: 'Perhaps never' },
      ],
      see: {
        short: atJam.longestS === null ? 'It may never open.' : `It may take ${second(atJam.longestS)}.`,
        values: [
          { name: 'multiple of the rating', text: `${figures(jammedA / fuseA)} times` },
          { name: 'sure to open from', text: `${sureAt} times` },
        ],
        picture: intervals('Current of the jammed pump against the fuse', [{ name: 'jammed pump', low: 0, high: jammedA, text: `${jammedA} A` }], {
          value: sureAt * fuseA,
          text: `sure to open: ${amp(sureAt * fuseA)}`,
        }),
      },
      why: ['A fuse is a piece of metal that must melt. Just above its rating it is only warm. Its times are from memory here: read the maker’s curve.'],
      keep: 'The rating is what a fuse [[carries]]; it is sure to open only well [[above]] it.',
      working: { id: 'fuseProtectsWire', inputs: pair },
    },
    {
      id: 'cooks',
      title: 'And the wire?',
      ask: `${jammedA} A flow on and on. How hot does the copper become?`,
      options: [
        { text: `It stays below ${limitC} °C: the fuse is there for that`, reply: `it may carry ${amp(wireA)}; this is more, and the fuse says nothing.` },
        { text: `Somewhat above ${limitC} °C` },
        { text: 'It glows', reply: 'not at this current: that is what makes it treacherous.' },
      ],
      see: {
        short: `${degree(jammed.low)} to ${degree(jammedHighC)}; ${limitC} °C are passed after ${second(wireAtJamS)}.`,
        picture: bars('Copper at the jammed pump’s current', [{ name: `at ${jammedA} A`, value: jammedHighC, text: degree(jammedHighC) }], {
          value: limitC,
          text: `limit ${limitC} °C`,
        }),
      },
      why: ['Nothing glows and nothing smells at first. The PVC softens, then gets hard and cracks, over weeks of jammed pumps.'],
      keep: 'The wire cooks [[slowly]], and no one [[sees]] it.',
      working: { id: 'timeToTemperatureS', inputs: { ...wire, currentA: jammedA, wantedC: limitC } },
    },
    {
      id: 'zone',
      title: 'The zone, and the right fuse',
      ask: `From ${amp(zoneLowA)} to ${amp(zoneHighA)} nothing guards the wire. Which fuse closes the gap and still carries the pump’s ${pumpA} A?`,
      options: [
        { text: `${larger} A: the bigger the safer`, reply: largerZone === undefined ? 'no.' : `the zone then reaches up to ${amp(largerZone.highA)}.` },
        { text: `${smallerA} A` },
        { text: '5 A', reply: `the pump alone draws ${pumpA} A: this fuse opens with nothing wrong.` },
      ],
      see: { short: `${smallerA} A: it guards the wire at every current.`, picture: zonePicture },
      why: [
        `From ${amp(zoneHighA)} on the ${fuseA} A fuse opens before the wire is too hot; below ${amp(zoneLowA)} the wire stands it. At ${sureAt} times ${smallerA} A the wire is still below its limit, so with that fuse the zone is gone. The fuse guards the wire, not the pump.`,
      ],
      keep: `Choose the fuse by the [[wire]]: ${sureAt} times its rating must not exceed what the wire [[stands]].`,
    },
  ],
  answer: {
    short: `Not from ${zone}.`,
    words: [
      `In a short circuit it does. Against a jammed pump take a fuse of ${smallerA} A: the lesson’s times of fuses are from memory, so check with the maker’s curve.`,
    ],
    picture: zonePicture,
  },
  whatIf,
  checks: [
    {
      kind: 'derived',
      what: `Time in which ${checkedA} A bring this wire to ${limitC} °C, heat in the copper alone. The fuse’s times are transcribed from memory: no print of them was read`,
      method: 'small equal steps in time, surface found by halving',
      theirs: warmingS({ ...wire, currentA: checkedA, wantedC: limitC, stepS: 0.05 }),
      ours: timeToTemperatureS({ ...wire, currentA: checkedA, wantedC: limitC, insulationShare: 0 }) ?? Number.NaN,
      unit: 's',
      verdict: 'Both solutions agree. Of the fuse nothing is proven here: ask its maker.',
    },
  ],
  mistakes: [
    {
      title: 'A larger fuse',
      verdict: 'unsound',
      done: `The fuse opened once, so ${larger} A is put in.`,
      costs: largerZone === undefined ? '' : `The zone without guard grows to ${amp(largerZone.lowA)} to ${amp(largerZone.highA)}.`,
      value: { name: 'wider by', text: largerZone === undefined ? '' : amp(largerZone.highA - zoneHighA) },
      instead: 'Find out why it opened.',
    },
    {
      title: 'Rating equal to the wire',
      verdict: 'unsound',
      done: `The wire may carry ${amp(wireA)}, so the next fuse below it, ${fuseA} A, is called right.`,
      costs: `At ${fuseA} A the copper has ${degree(atRatingC)}; the fuse holds ${amp(sureAt * fuseA)} for minutes or longer.`,
      value: { name: 'held, against what the wire stands', text: `${amp(sureAt * fuseA)} against ${amp(wireA)}` },
      instead: `${sureAt} times the rating must fit the wire.`,
    },
    {
      title: 'The bundle forgotten',
      verdict: 'unsound',
      done: `The wire is tied to others and may carry only ${bundledA} A there. The fuse stays.`,
      costs: `From ${bundledA} A to ${amp(sureAt * fuseA)} nothing is sure to open.`,
      value: { name: 'zone in the bundle', text: `${amp(sureAt * fuseA - bundledA)} at least` },
      instead: 'Reckon the wire where it lies, then choose the fuse.',
    },
  ],
  measurement: {
    needs: [`bench supply limited to ${benchA} A`, `half a metre of ${bench.areaMm2} mm² PVC wire, hung free`, 'thin probe bound to it, a watch'],
    steps: [
      `Send ${benchA} A and start the watch.`,
      `Note the time at which the probe passes ${benchC} °C, and switch off.`,
      `Ask the fuse’s data sheet how long a ${benchA} A fuse carries that.`,
    ],
    reads: `time to ${benchC} °C at ${benchA} A`,
    low: 0.5 * benchS,
    high: 2.2 * benchS,
    unit: 's',
    why: `The heat balance gives ${second(benchS)} with the insulation warming along. The probe lags and cools the wire: it reads late. A ${benchA} A fuse carries ${benchA} A without end: it would never guard this wire.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction' },
      { minutes: 22, what: 'Four steps' },
      { minutes: 10, what: 'Slider, check, mistakes' },
      { minutes: 10, what: 'The measurement' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: ['What does the number on a fuse mean?', 'What draws more than it should, and not very much more?', 'Who is guarded by the fuse?'],
    expect: [
      'All are sure that it opens at once.',
      'Someone wants the fuse to guard the pump.',
      `The table knows ${fuseBands['ISO 8820-3'].ratingsA.length} ratings; let them choose.`,
    ],
  },
  code: { text: codeText, prints: { wireA, wireAtJamS, jammedHighC, zoneLowA, zoneHighA, smallerA } },
  cautions: quoted('ca-power-off', 'ca-fuse-not-larger', 'ca-fuse-never-up', 'ca-water-contact', 'ca-burns'),
}
