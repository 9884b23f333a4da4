import { bars } from '../../draw/bars.ts'
import { circuitLine } from '../../draw/circuit.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { figures, percent, say } from '../../lesson/say.ts'
import { quoted } from '../../rulesById.ts'
import {
  allowedV,
  betterDropV,
  betterMm2,
  currentA,
  dropV,
  found,
  jointOhm,
  jointShare,
  lampV,
  lengthM,
  oneWayOhm,
  supplyV,
  wire,
  wireDropV,
} from './inCode.ts'
import codeText from './inCode.ts?raw'
import { sheets } from './sheets.ts'
import { whatIf } from './whatIf.ts'

/** All in volts, to the hundredth, so that the class can compare. */
const volt = (value: number): string => `${value.toFixed(2)} V`
const asked = circuitLine('The lamps’ circuit', ['battery +', 'joint', 'lamps +'], ['battery −', 'lamps −'], [])
const stretches = bars(
  'Volts lost, stretch by stretch',
  found.stretches
    .filter((stretch) => stretch.from !== 'lamps +')
    .map((stretch) => ({
      name: `${stretch.from} to ${stretch.to}`,
      value: stretch.dropV,
      text: volt(stretch.dropV),
      kind: stretch.from === 'before the joint' ? ('solder' as const) : ('metal' as const),
    })),
)
const remadeV = supplyV - wireDropV
const onceV = currentA * oneWayOhm
const thinOhm = (oneWayOhm * wire.areaMm2) / 0.75
const metre = oneWayOhm / lengthM
const tryM = 5
const tryA = 2

/** "Is it the joint or the cable?" */
export const lesson: Lesson = {
  number: 3,
  id: 'dim-lamps',
  question: 'The lamps are dim: is it the joint or the cable?',
  summary:
    'The class suspects the joint, for it looks old. Read stretch by stretch under load, the long thin cable takes nearly all of the loss, and it counts out and back.',
  scenario: `Invented: a puppet theatre hangs its lamps ${lengthM} m from the battery. They are dim. In the middle of the cable is an old joint, and everyone points at it.`,
  given: [
    { name: 'battery, lamps on', text: `${supplyV} V` },
    { name: 'lamps draw', text: `${currentA} A` },
    { name: 'cable', text: `${lengthM} m of two wires of ${wire.areaMm2} mm²` },
    { name: 'one metre of one wire', text: say(metre, 'Ω') },
  ],
  picture: asked,
  needs: ['bench supply of 2 A', '10 m of thin two-wire cable', 'a lamp or resistor as load', 'meter'],
  steps: [
    {
      id: 'lamps',
      title: 'What is left at the lamps',
      ask: `The battery shows ${supplyV} V with the lamps on. What do you read at the lamps?`,
      options: [
        { text: 'The same: it is one circuit', reply: 'the current is the same everywhere; the volts are used up on the way.' },
        { text: 'A few tenths less', reply: `for a short cable. This one is ${lengthM} m long, and thin for ${currentA} A.` },
        { text: 'Almost three volts less' },
      ],
      picture: asked,
      see: {
        short: `${volt(lampV)}: ${volt(dropV)} are lost.`,
        picture: bars('At the battery and at the lamps', [
          { name: 'at the battery', value: supplyV, text: volt(supplyV) },
          { name: 'at the lamps', value: lampV, text: volt(lampV), kind: 'solder' },
        ]),
      },
      why: ['Lamps with a fifth fewer volts are far dimmer. Something between battery and lamps takes what is missing.'],
      keep: 'Current is the same all along a circuit; [[volts]] are lost [[on the way]].',
    },
    {
      id: 'joint',
      title: 'Over the joint',
      ask: `You put the tips on both sides of the old joint, lamps on. Its resistance turns out to be ${say(jointOhm, 'Ω', 2)}. How much does it take?`,
      options: [
        { text: 'Most of the loss: old joints are the weak place', reply: 'it looks so. Read it: ten milliohms are a poor joint and still a small loss.' },
        { text: 'Under a tenth of a volt' },
        { text: 'Half of the loss', reply: 'nothing divides a loss evenly among suspects. Each takes current times its own ohms.' },
      ],
      see: {
        short: `${volt(currentA * jointOhm)}: ${percent(jointShare)} of the loss.`,
        values: [{ name: 'current × ohms of the joint', text: `${currentA} A × ${say(jointOhm, 'Ω', 2)}` }],
        picture: bars('The joint against all that is lost', [
          { name: 'the joint', value: currentA * jointOhm, text: volt(currentA * jointOhm), kind: 'solder' },
          { name: 'all', value: dropV, text: volt(dropV) },
        ]),
      },
      why: ['Make it anew if you like: the lamps will not see the difference.'],
      keep: 'Each stretch takes [[current]] times its own [[ohms]].',
    },
    {
      id: 'stretches',
      title: 'Stretch by stretch',
      ask: 'Where are the other volts?',
      options: [
        { text: 'In the wire out to the lamps', reply: 'half of them are. The current also has to come back.' },
        { text: 'In the wire out and the wire back, half each' },
        { text: 'In the battery', reply: `its ${supplyV} V were read with the lamps on: what it loses inside is gone already.` },
      ],
      see: { short: `${volt(onceV)} out, and ${volt(onceV)} back.`, picture: stretches },
      why: ['The return is as long as the way out and carries the same current. Who reads only the + wire sees half of the fault.'],
      keep: 'The wire counts [[twice]]: out and [[back]].',
      working: { id: 'voltageDropV', inputs: { currentA, outResistanceOhm: oneWayOhm, returnResistanceOhm: oneWayOhm, jointsOhm: [jointOhm] } },
    },
    {
      id: 'size',
      title: 'Which cable instead',
      ask: `At most ${volt(allowedV)} may be lost in the wire. Which area do you fetch?`,
      options: [
        { text: '2.5 mm², the next size up', reply: 'that takes the loss down by two fifths only.' },
        { text: '4 mm²', reply: `still ${volt((onceV * 2 * wire.areaMm2) / 4)}.` },
        { text: `${betterMm2} mm²` },
      ],
      see: {
        short: `${betterMm2} mm²: it loses ${volt(betterDropV)}.`,
        picture: bars(
          'Loss by area',
          [1.5, 2.5, 4, 6, 10].map((areaMm2) => ({
            name: `${areaMm2} mm²`,
            value: (wireDropV * wire.areaMm2) / areaMm2,
            text: volt((wireDropV * wire.areaMm2) / areaMm2),
          })),
          { value: allowedV, text: `allowed ${volt(allowedV)}` },
        ),
      },
      why: ['Twice the area loses half. Here almost five times the area is asked for; so shorten the run first, if you can.'],
      keep: 'Twice the [[area]] loses [[half]] of the volts.',
      working: {
        id: 'areaForDropMm2',
        inputs: { currentA, outLengthM: lengthM, returnLengthM: lengthM, allowedDropV: allowedV, material: wire.material, temperatureC: wire.temperatureC },
      },
    },
  ],
  answer: {
    short: `It is the cable: ${volt(wireDropV)} of ${volt(dropV)}.`,
    words: [`The joint takes ${percent(jointShare)}. A cable of ${betterMm2} mm² brings the lamps back.`],
    picture: stretches,
  },
  whatIf,
  checks: [
    {
      kind: 'published',
      what: '20 A through 100 ft of AWG 14 wire, at the resistance that the table gives for it',
      source: 'FAA AC 43.13-1B',
      title: '20 A through 100 ft of AWG 14 at 0.00306 ohm/ft',
      verdict: 'The same law, the same figure. The table counts one way, for an aircraft’s metal is the return.',
    },
  ],
  mistakes: [
    {
      title: 'The return forgotten',
      verdict: 'unsound',
      done: 'Someone reckons the loss from the length of the cable, once.',
      costs: `Half is missing: ${volt(onceV)} in place of ${volt(wireDropV)}. The cable is bought too thin.`,
      value: { name: 'loss reckoned against loss', text: `${volt(onceV)} against ${volt(wireDropV)}` },
      instead: 'Count the wire out and the wire back.',
    },
    {
      title: 'Only the joint is remade',
      verdict: 'caution',
      done: 'The old joint is cut out and made anew, perfectly.',
      costs: `The lamps get ${volt(remadeV)} in place of ${volt(lampV)}: nobody sees it.`,
      value: { name: 'gained', text: volt(remadeV - lampV) },
      instead: 'Read every stretch before you cut.',
    },
    {
      title: 'Read with the lamps off',
      verdict: 'unsound',
      done: 'To be safe, the lamps are unplugged while the volts are read.',
      costs: `Without current nothing is lost: ${volt(supplyV)} everywhere, and the fault is gone from sight.`,
      value: { name: 'loss at 0 A', text: '0 V' },
      instead: 'Read under load, hands clear.',
    },
    {
      title: 'A thin extension',
      verdict: 'unsound',
      done: 'For the next village the same length is made of 0.75 mm², which was at hand.',
      costs: `At ${currentA} A ${volt(2 * currentA * thinOhm)} would be lost, almost half of what the battery gives.`,
      value: { name: 'loss with 0.75 mm²', text: volt(2 * currentA * thinOhm) },
      instead: 'Choose the area by the loss before the journey.',
    },
  ],
  measurement: {
    needs: [`bench supply set to ${tryA} A`, `${tryM} m of cable of ${wire.areaMm2} mm²`, 'meter'],
    steps: [
      'Join the far ends of the two wires of the cable.',
      `Send ${tryA} A out one wire and back the other.`,
      'Read from end to end of each wire, then over both.',
    ],
    reads: 'drop out and back',
    low: 0.95 * 2 * tryM * metre * tryA,
    high: 1.1 * 2 * tryM * metre * tryA,
    unit: 'V',
    why: `From 5 % below the copper of that area to a tenth above: areas are nominal, strands wind, and wire warms. One wire alone gives half, near ${figures(tryM * metre * tryA, 2)} V.`,
  },
  sheets,
  notes: {
    plan: [
      { minutes: 5, what: 'The question and the prediction' },
      { minutes: 22, what: 'Four steps' },
      { minutes: 8, what: 'Slider, check, mistakes' },
      { minutes: 15, what: 'The measurement' },
      { minutes: 12, what: 'Sheet A or B' },
    ],
    ask: ['What would you read if the joint were open?', 'Where do the lost volts go? What gets warm?', 'When is the joint to blame after all?'],
    expect: ['Most point at the joint.', 'The return is forgotten by half of the class.', 'Some read with the load off: let them, then switch it on.'],
  },
  code: { text: codeText, prints: { oneWayOhm, wireDropV, dropV, lampV, jointShare, betterMm2, betterDropV } },
  cautions: quoted('ca-power-off', 'ca-power-on-for-readings', 'ca-selv-supply'),
}
