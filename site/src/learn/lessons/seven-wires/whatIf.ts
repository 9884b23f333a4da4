import { bundleSection } from '../../draw/sections.ts'
import { percent, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { aloneA, each, packed, wire, wireMm } from './inCode.ts'

const coreMm = 2 * Math.sqrt(wire.areaMm2 / Math.PI)
/** Linear interpolation between whole wires, the slider's steps. */
const between = (count: number, value: (whole: number) => number): number => {
  const below = Math.floor(count)
  return value(below) + (count - below) * (value(Math.min(below + 1, 19)) - value(below))
}
const share = (count: number): number => each(count) / aloneA

export const whatIf: WhatIf = {
  title: 'What if there were more, or fewer?',
  ask: 'Nineteen wires in one tie, all loaded. How much is left of each one’s current, in percent?',
  setting: { label: 'loaded wires in the tie', unit: '', low: 1, high: 19, step: 1, start: 7 },
  at: 19,
  result: { label: 'left of each one’s current', unit: '%', low: 0, high: 100, step: 5 },
  value: (count) => 100 * between(count, share),
  picture: (count) =>
    bundleSection(`${count} wires, packed`, { coreMm, outsideMm: wireMm }, packed(count), `${count} wires, ${say(packed(count).diameterMm, 'mm', 2)} across`),
  says: (count) =>
    `${count} wires: ${percent(share(count))} is left, ${say(each(count), 'A')} in each, ${say(count * each(count), 'A')} in all. The bundle is ${say(packed(count).diameterMm, 'mm', 2)} across.`,
}
