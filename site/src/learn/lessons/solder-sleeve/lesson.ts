import { heatJointDefaults, heatSolderSleeve } from '@strandwise/core/heating'
import { insulation } from '@strandwise/core/materials'
import { bars } from '../../draw/bars.ts'
import { curves } from '../../draw/chart.ts'
import { sleeveSide } from '../../draw/sleeve.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import {
  endlessC,
  held,
  heldS,
  liquidusC,
  ringMeltsS,
  ringMeltsStrongS,
  sampleTimesS,
  sleeve,
  strong,
  strongC,
  tubeShrinksS,
  weak,
  weakC,
  wettedS,
  wireC,
} from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

const degree = (value: number): string => `${Math.round(value)} °C`
const second = (value: number): string => say(value, 's', 2)
const superheatK = heatJointDefaults.wettingSuperheatK.value
const [side] = sleeve.conductors
const shape = {
  conductorMm: sleeve.joint.diameterMm / 2,
  outsideMm: side.insulationOutsideMm,
  lapMm: sleeve.joint.lapMm,
  stubMm: side.stubMm,
  tubeMm: sleeve.tube.lengthMm,
  tubeInsideMm: sleeve.tube.insideMm,
  wallMm: sleeve.tube.wallMm,
}
const asked = sleeveSide(shape)
const warming = curves(
  {
    title: `The wire under the ring, air of ${weakC} °C`,
    xLabel: 'stream on, s',
    yLabel: '°C',
    series: [{ name: 'the wire', kind: 'main', x: sampleTimesS, y: weak.jointC }],
    limits: [{ name: `alloy liquid, ${degree(liquidusC)}`, y: liquidusC, hot: false }],
    marks: [{ name: `ring melts, ${second(ringMeltsS)}`, x: ringMeltsS }],
  },
  `The ring melts after ${second(ringMeltsS)}; after ${heldS} s the wire has ${degree(wireC)}.`,
)
const both = bars('Ring and wire in the strong stream', [
  { name: 'ring melts', value: ringMeltsStrongS, text: second(ringMeltsStrongS), kind: 'solder' },
  { name: 'wire takes the solder', value: wettedS, text: second(wettedS) },
])
const atRing = heatSolderSleeve({ ...sleeve, tool: { kind: 'hot-air', airC: strongC, airSpeedMPerS: 8 }, toolOffS: 1.5 * ringMeltsStrongS })
const thick = heatSolderSleeve({
  ...sleeve,
  conductors: sleeve.conductors.map((one) => ({ ...one, areaMm2: 2.5, insulationOutsideMm: 2.8 })),
  joint: { ...sleeve.joint, diameterMm: 3.5 },
  tool: { kind: 'hot-air', airC: strongC, airSpeedMPerS: 8 },
  toolOffS: heldS,
})
const gentle = held(strongC, 3)
const long = heatSolderSleeve({ ...sleeve, tool: { kind: 'hot-air', airC: weakC, airSpeedMPerS: 8 }, toolOffS: 3000 })
const sealC = insulation('PVC').shortExposureC?.low ?? Number.NaN

/** "The ring melted: is it joined?" */
export const lesson: Lesson = {
  number: 7,
  id: 'solder-sleeve',
  question: 'The ring has melted: is the joint soldered?',
  summary: 'The class believes its eyes: tube tight, ring melted, so joined. Ring and tube lie in the stream and warm first; the wire inside stays too cool.',
  scenario: `Invented: on a windy quay someone shrinks a solder sleeve over a lamp’s lead with a weak hot-air tool: ${weakC} °C where it meets the sleeve. The tube grips, the ring melts and looks fine.`,
  given: [
    { name: 'ring', text: `Sn42Bi58, liquid at ${degree(liquidusC)}` },
    { name: 'tube shrinks at', text: degree(sleeve.tube.recoveryC) },
    { name: 'wires', text: `two of ${side.areaMm2} mm², lapped over ${sleeve.joint.lapMm} mm` },
    { name: 'stream', text: `${weakC} °C, held for ${heldS} s` },
  ],
  picture: asked,
  needs: ['solder sleeves and wire of 1 mm²', 'hot-air tool', 'thermometer with a thin probe', 'side cutters to open the joint'],
  steps: [
    {
      id: 'ring',
      title: 'What you see',
      ask: 'When does the ring melt, in this weak stream?',
      options: [
        { text: 'Not at all: the air is too cool', reply: `the air is above the ${degree(liquidusC)} of the alloy.` },
        { text: 'After about half a minute' },
        { text: 'Only with the wire, when all is hot', reply: 'the ring is thin and lies under the tube: it does not wait for the wire.' },
      ],
      picture: asked,
      see: {
        short: `The tube grips after ${second(tubeShrinksS)}, the ring melts after ${second(ringMeltsS)}.`,
        picture: bars('In the weak stream', [
          { name: 'tube shrinks', value: tubeShrinksS, text: second(tubeShrinksS), kind: 'sleeve' },
          { name: 'ring melts', value: ringMeltsS, text: second(ringMeltsS), kind: 'solder' },
        ]),
      },
      why: ['Thin plastic and a thin ring take up little heat. What you see is the outside of the joint.'],
      keep: 'Tube and [[ring]] warm first: they lie in the [[stream]].',
    },
    {
      id: 'wire',
      title: 'What you don’t see',
      ask: `The stream stays on for ${heldS} s. How warm is the wire under the ring?`,
      options: [
        { text: `${weakC} °C, as the air`, reply: 'the air gives its heat through the tube, and the copper leads it away at once.' },
        { text: 'Hot enough, for the ring has melted', reply: 'ring and wire are not equally warm.' },
        { text: 'Below the melting of the ring' },
      ],
      see: { short: `${degree(wireC)}: the alloy melts at ${degree(liquidusC)} and takes near ${degree(liquidusC + superheatK)}.`, picture: warming },
      why: ['Two wires lead heat away like fins, and the wall of the tube holds it back. Solder takes only on wire that is hotter than the melting solder.'],
      keep: 'The solder takes only when the [[wire]] is hotter than the [[melting]] solder.',
      working: { id: 'heatSolderSleeve', inputs: { ...sleeve, tool: { kind: 'hot-air', airC: weakC, airSpeedMPerS: 8 }, toolOffS: heldS } },
    },
    {
      id: 'longer',
      title: 'Just hold it longer',
      ask: 'Would it join if you held the stream on it for ten minutes?',
      options: [
        { text: 'Yes: patience does it', reply: 'the wire levels off at a temperature, and that is too low.' },
        { text: 'No: it never gets there' },
        { text: 'Yes, if the wind drops', reply: 'the air at the sleeve was measured where it is: it is too cool.' },
      ],
      see: {
        short: `No: at steady state the wire has ${degree(endlessC)}.`,
        picture: bars(
          'The wire',
          [
            { name: `after ${heldS} s`, value: wireC, text: degree(wireC) },
            { name: 'at steady state', value: endlessC, text: degree(endlessC) },
          ],
          { value: liquidusC, text: `liquid ${degree(liquidusC)}` },
        ),
      },
      why: ['What the stream brings in and what the copper leads away come to a balance. Only hotter or stronger air moves it.'],
      keep: 'More [[time]] does not help where the [[balance]] is too cool.',
    },
    {
      id: 'strong',
      title: 'A stream that does it',
      ask: `Now ${strongC} °C at the sleeve. The ring melts after ${second(ringMeltsStrongS)}. When is it joined?`,
      options: [
        { text: 'With the ring', reply: 'the wire always comes later.' },
        { text: 'A few seconds after it', reply: 'the wire has far more copper than the ring has solder.' },
        { text: `About ${Math.round(wettedS / ringMeltsStrongS)} times as late` },
      ],
      see: { short: `After ${second(wettedS)}: ${figures(wettedS / ringMeltsStrongS, 2)} times as late.`, picture: both },
      why: ['So don’t lift the tool when the ring melts. Watch the solder run along the strands, out of the ring’s place, on both sides.'],
      keep: 'Go on after the ring has melted, until the solder [[runs]] along the [[strands]].',
    },
  ],
  answer: {
    short: `No: the ring melts after ${second(ringMeltsS)}, the wire never gets there.`,
    words: [`After ${heldS} s the wire has ${degree(wireC)}; held on for as long as you like, ${degree(endlessC)}. Only a hotter or a stronger stream helps.`],
    picture: warming,
  },
  whatIf,
  checks: [
    {
      kind: 'derived',
      what: `What the wire tends to in air of ${weakC} °C`,
      method: 'the run in time held on for 3000 s, against the closed balance of fins at steady state',
      theirs: long.jointAtToolOffC,
      ours: endlessC,
      unit: '°C',
      verdict: 'Run and balance meet. No measurement of such a sleeve is published that we know of.',
    },
  ],
  mistakes: [
    {
      title: 'Lifted when the ring melts',
      verdict: 'unsound',
      done: `With the strong stream the tool is lifted soon after the ring has melted, at ${second(1.5 * ringMeltsStrongS)}.`,
      costs: `The wire only reaches ${degree(atRing.jointPeakC)}: the solder lies on it in a drop and does not wet it.`,
      value: { name: 'short of liquid by', text: `${Math.round(liquidusC - atRing.jointPeakC)} K` },
      instead: 'Go on until the solder runs along the strands.',
    },
    {
      title: 'The same tool, a thicker wire',
      verdict: 'unsound',
      done: `What did well on ${side.areaMm2} mm² is used on 2.5 mm², for ${heldS} s.`,
      costs:
        thick.wettedAtS === null
          ? `After ${heldS} s the wire has ${degree(thick.jointAtToolOffC)}: the solder does not take.`
          : `The solder takes after ${second(thick.wettedAtS)} in place of ${second(wettedS)}.`,
      value: { name: `after ${heldS} s`, text: degree(thick.jointAtToolOffC) },
      instead: 'For thick wire: a crimp, or an iron.',
    },
    {
      title: 'Held too far away',
      verdict: gentle.wettedAtS === null ? 'unsound' : 'caution',
      done: 'The nozzle is held a hand’s width away, hotter to make up for it: the air at the sleeve is as hot, but slow.',
      costs:
        gentle.wettedAtS === null
          ? `The wire comes to ${degree(gentle.jointAtToolOffC)} and does not take the solder.`
          : `The solder takes after ${second(gentle.wettedAtS)} in place of ${second(wettedS)}.`,
      value: { name: 'the wire in the gentle stream', text: degree(gentle.jointAtToolOffC) },
      instead: 'Near, with a reflector round the sleeve.',
    },
    {
      title: 'PVC wire in the strong stream',
      verdict: 'unsound',
      done: `The wire is PVC, and the strong stream is held for ${heldS} s.`,
      costs: `At the sleeve’s end the copper has ${degree(strong.insulationPeakC[0] ?? 0)}; PVC stands ${degree(sealC)} for seconds.`,
      value: { name: 'too hot by', text: `${Math.round((strong.insulationPeakC[0] ?? 0) - sealC)} K` },
      instead: 'Solder sleeves need wire with insulation made for heat.',
    },
  ],
  measurement: {
    needs: ['hot-air tool at its lowest setting that melts the ring', 'thin probe laid between the two wires under the ring', 'a watch'],
    steps: [
      'Bind the probe between the wires, slide the sleeve over, start the stream.',
      'Note the time at which the ring melts, and what the probe reads then.',
      'Open the cold joint with the cutters: did the strands take solder?',
    ],
    reads: 'probe when the ring melts',
    low: 30,
    high: liquidusC - 5,
    unit: '°C',
    why: `In the model the wire has ${degree(heatSolderSleeve({ ...sleeve, tool: { kind: 'hot-air', airC: weakC, airSpeedMPerS: 8 }, toolOffS: ringMeltsS }).jointAtToolOffC)} when the ring melts. Streams differ by half either way, so expect only this: below ${degree(liquidusC)}.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction; show a melted ring' },
      { minutes: 20, what: 'Four steps' },
      { minutes: 8, what: 'Slider, check, mistakes' },
      { minutes: 20, what: 'The measurement; open the joints' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: ['Which part of the sleeve did you look at?', 'Where does the heat of the wire go?', 'How would you see that the strands took solder?'],
    expect: ['All trust the melted ring.', 'Most want to hold it longer.', 'An opened cold joint convinces at once.'],
  },
  code: { text: codeText, prints: { ringMeltsS, tubeShrinksS, wireC, endlessC, wettedS } },
  cautions: quoted('ca-power-off', 'ca-burns', 'ca-hot-air-fire', 'ca-fluoropolymer-fume', 'ca-eyes-cutting', 'ca-flux-fume'),
}
