import { bundleTemperatureC, steadyCurrentA } from '@strandwise/core/ampacity'
import { packBundle } from '@strandwise/core/bundle'
import { bars } from '../../draw/bars.ts'
import { bundleSection } from '../../draw/sections.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, percent, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import { aloneA, bundleMm, each, left, limitC, ofCurve, ofSeven, sevenA, threeOfSevenA, together, wire, wireMm } from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const amp = (value: number): string => say(value, 'A')
const coreMm = 2 * Math.sqrt(wire.areaMm2 / Math.PI)
const section = bundleSection(
  'Seven wires in one tie, cut across',
  { coreMm, outsideMm: wireMm },
  ofSeven,
  `seven wires of ${say(wireMm, 'mm')}, ${say(bundleMm, 'mm')} across`,
)
const overloaded = bundleTemperatureC({ ...wire, currentA: aloneA, loadedWires: 7, bundleOutsideMm: bundleMm })
const twoTiesA = each(4)
const benchA = 5
const bench = { areaMm2: 0.5, insulationThicknessMm: 0.6, insulationConductivityWPerMK: wire.insulationConductivityWPerMK, ambientC: 22 } as const
const benchMm = 2 * Math.sqrt(bench.areaMm2 / Math.PI) + 2 * bench.insulationThicknessMm
const riseOf = (loadedWires: number): number =>
  bundleTemperatureC({ ...bench, currentA: benchA, loadedWires, bundleOutsideMm: packBundle(Array.from({ length: loadedWires }, () => benchMm)).diameterMm })
    .surfaceC - bench.ambientC
const airA = steadyCurrentA({ ...wire, limitC }) ?? 0

/** "What is left of each one's current?" */
export const lesson: Lesson = {
  number: 5,
  id: 'seven-wires',
  question: 'Seven wires in one tie: what is left of each one’s current?',
  summary: 'The class expects a little less, or a seventh. About half is left: seven wires make seven times the heat and have three times the surface.',
  scenario:
    'Invented: on a market stall seven wires to lamps, fridge and till were bound into one neat bundle. Each alone was chosen well. In summer the tie is soft.',
  given: [
    { name: 'each wire', text: `${wire.areaMm2} mm², ${say(wireMm, 'mm')} across` },
    { name: 'each alone may carry', text: amp(aloneA) },
    { name: 'air', text: `${wire.ambientC} °C` },
    { name: 'limit of the PVC', text: `${limitC} °C` },
    { name: 'loaded', text: 'all seven' },
  ],
  picture: section,
  needs: ['bench supply of 5 A', `seven metres of ${bench.areaMm2} mm² wire in one length`, 'five ties', 'thermometer with a thin probe'],
  steps: [
    {
      id: 'surface',
      title: 'Heat and surface',
      ask: 'Seven wires make seven times the heat. How much more surface has the bundle than one wire?',
      options: [
        { text: 'Seven times as much: each brings its own', reply: 'what lies inside touches no air; only the outline counts.' },
        { text: 'About three times as much' },
        { text: 'Two and two thirds, the root of seven', reply: 'that is what a solid piece of seven times the area had; round wires leave gaps.' },
      ],
      picture: section,
      see: {
        short: `${figures(bundleMm / wireMm, 2)} times as wide, so ${figures(bundleMm / wireMm, 2)} times the surface.`,
        values: [
          { name: 'one wire', text: say(wireMm, 'mm') },
          { name: 'the bundle', text: say(bundleMm, 'mm') },
        ],
        picture: bars('Heat and surface, against one wire', [
          { name: 'heat', value: 7, text: '7 times' },
          { name: 'surface', value: bundleMm / wireMm, text: `${figures(bundleMm / wireMm, 2)} times`, kind: 'solder' },
        ]),
      },
      why: ['Six round wires fit exactly around a seventh: three across. Heat grows with the count, surface only with the width.'],
      keep: 'Seven wires make [[seven]] times the heat and have [[three]] times the surface.',
    },
    {
      id: 'left',
      title: 'What is left',
      ask: 'So how much of its current may each of the seven carry?',
      options: [
        { text: 'A seventh', reply: 'then all seven together made a seventh of one wire’s heat.' },
        { text: 'Three sevenths, as the surfaces say', reply: 'that is the heat of each. The current goes with its root.' },
        { text: 'About half' },
        { text: 'Nearly all', reply: 'so it looks in a short tie; in a long bundle the heat finds no end.' },
      ],
      see: {
        short: `${percent(left)}: ${amp(sevenA)} in place of ${amp(aloneA)}.`,
        picture: bars('Current of each wire', [
          { name: 'alone', value: aloneA, text: amp(aloneA) },
          { name: 'among seven', value: sevenA, text: amp(sevenA), kind: 'solder' },
        ]),
      },
      why: [
        'Three sevenths of the heat give 65 % by the root. A wide bundle stirs the air less for its size, and the middle is warmer than the outside: that takes the rest.',
      ],
      keep: 'Each of seven loaded wires keeps about [[half]] of its current.',
      working: { id: 'bundleTemperatureC', inputs: { ...wire, currentA: sevenA, loadedWires: 7, bundleOutsideMm: bundleMm } },
    },
    {
      id: 'together',
      title: 'All of them together',
      ask: 'Seven wires at half of their current: what do they carry together, against one alone?',
      options: [
        { text: 'Seven times as much', reply: 'so they would at their full current; each keeps only half.' },
        { text: 'Not quite four times as much' },
        { text: 'As much as one', reply: 'the bundle has seven times the copper and three times the surface.' },
      ],
      see: {
        short: `${figures(together, 2)} times one alone: ${amp(7 * sevenA)}.`,
        picture: bars('Together', [
          { name: 'one alone', value: aloneA, text: amp(aloneA) },
          { name: 'seven in one tie', value: 7 * sevenA, text: amp(7 * sevenA), kind: 'solder' },
          { name: 'seven apart', value: 7 * aloneA, text: amp(7 * aloneA), kind: 'sleeve' },
        ]),
      },
      why: ['Apart they could carry nearly twice that: each then gives its heat to its own air. Laying them apart costs no copper.'],
      keep: 'Wires laid [[apart]] carry nearly [[twice]] as much as seven in one tie.',
    },
    {
      id: 'few',
      title: 'Not all loaded',
      ask: 'Only three of the seven are on at the same time. What may each of the three carry?',
      options: [
        { text: 'As among seven', reply: 'the four that rest make no heat.' },
        { text: 'About three quarters of what it could alone' },
        { text: 'As much as alone', reply: 'three still warm each other.' },
      ],
      see: {
        short: `${amp(threeOfSevenA)}: ${percent(threeOfSevenA / aloneA)}.`,
        picture: bars('Current of each loaded wire', [
          { name: 'alone', value: aloneA, text: amp(aloneA) },
          { name: 'three of seven', value: threeOfSevenA, text: amp(threeOfSevenA), kind: 'sleeve' },
          { name: 'all seven', value: sevenA, text: amp(sevenA), kind: 'solder' },
        ]),
      },
      why: ['Count what is on at the same time: only that makes heat. But count on the worst moment, not on the usual one.'],
      keep: 'Count only the wires that are [[loaded]] at the same [[time]].',
    },
  ],
  answer: {
    short: `About half: ${percent(left)}.`,
    words: [`Seven times the heat, ${figures(bundleMm / wireMm, 2)} times the surface, and a warm middle.`],
    picture: section,
  },
  whatIf,
  checks: [
    {
      kind: 'derived',
      what: 'Share left to each of seven wires, against the curve of SAE AS50881',
      readOff: true,
      method:
        'SAE AS50881, figure of bundle derating at sea level: read off the printed curve by a third party; the standard prints no numbers, so it does not count as published',
      theirs: ofCurve,
      ours: left,
      unit: '',
      verdict: 'The balance of one packed cylinder falls on the curve within a few hundredths.',
    },
  ],
  mistakes: [
    {
      title: 'Each alone was fine',
      verdict: 'unsound',
      done: `All seven carry the ${amp(aloneA)} that one may carry alone.`,
      costs: `The middle comes to ${Math.round(overloaded.centreC)} °C, ${Math.round(overloaded.centreC - limitC)} K above what PVC stands.`,
      value: { name: 'outside of the bundle', text: `${Math.round(overloaded.surfaceC)} °C` },
      instead: 'Ask first how many lie together.',
    },
    {
      title: 'A seventh',
      verdict: 'caution',
      done: 'To be safe each of the seven gets a seventh of its current.',
      costs: `${amp(aloneA / 7)} in place of ${amp(sevenA)}: each could carry ${figures(sevenA / (aloneA / 7), 2)} times as much.`,
      value: { name: 'reckoned against allowed', text: `${amp(aloneA / 7)} against ${amp(sevenA)}` },
      instead: 'Half is a good first guess for seven.',
    },
    {
      title: 'All in one tie, for neatness',
      verdict: 'caution',
      done: 'Seven wires that could lie in two ties lie in one.',
      costs: `In ties of three and four each could carry ${amp(twoTiesA)} or more.`,
      value: { name: 'given away', text: percent(1 - sevenA / twoTiesA) },
      instead: 'Make two ties, a finger apart.',
    },
  ],
  measurement: {
    needs: [`bench supply set to ${benchA} A`, `seven metres of ${bench.areaMm2} mm² wire in one length`, 'five ties, a thin probe under one of them'],
    steps: [
      `Hang the wire up loosely, no turn near another. Send ${benchA} A, wait ten minutes, note the kelvin above the air.`,
      `Fold it to seven lengths of one metre and tie them tightly. Send ${benchA} A, wait twenty minutes, note again.`,
      'Divide the second by the first.',
    ],
    reads: 'kelvin of seven over kelvin of one',
    low: 0.7 * (riseOf(7) / riseOf(1)),
    high: 1.2 * (riseOf(7) / riseOf(1)),
    unit: 'times',
    why: `A long bundle gives ${figures(riseOf(7) / riseOf(1), 2)}, from ${figures(riseOf(1), 2)} K to ${figures(riseOf(7), 2)} K. One metre loses heat at its ends, and the probe sits outside.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction; start the first reading' },
      { minutes: 20, what: 'Four steps' },
      { minutes: 8, what: 'Slider, check, mistakes' },
      { minutes: 25, what: 'The measurement; the sheets while you wait' },
    ],
    ask: ['Which of the seven is the warmest?', 'Why do six fit around one?', 'What does a tie do that a tray does not?'],
    expect: ['A seventh and nearly all share the votes.', 'Someone says the tie is the fault: it only holds them together.', `Apart: ${amp(airA)} each.`],
  },
  code: { text: codeText, prints: { aloneA, sevenA, left, bundleMm, threeOfSevenA } },
  cautions: quoted('ca-power-off', 'ca-burns', 'ca-selv-supply'),
}
