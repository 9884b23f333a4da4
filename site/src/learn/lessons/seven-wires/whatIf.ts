import { bundleSection } from '../../draw/sections.ts'
import { percent, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { aloneA, each, packed, wire, wireMm } from './inCode.ts'

const coreMm = 2 * Math.sqrt(wire.areaMm2 / Math.PI)
const most = 19
/** Linear interpolation between whole wires, the slider's steps. */
const between = (count: number, value: (whole: number) => number): number => {
  const below = Math.floor(count)
  return value(below) + (count - below) * (value(Math.min(below + 1, most)) - value(below))
}
/** Packing takes a tenth of a second: each bundle is packed once. */
const bundles = new Map<number, ReturnType<typeof packed>>()
const bundleOf = (count: number): ReturnType<typeof packed> => {
  const bundle = bundles.get(count) ?? packed(count)
  bundles.set(count, bundle)
  return bundle
}
const eachOf = (count: number): number => each(count, bundleOf(count))
const share = (count: number): number => eachOf(count) / aloneA

export const whatIf: WhatIf = {
  title: 'What if there were more, or fewer?',
  ask: 'Nineteen wires in one tie, all loaded. How much is left of each one’s current, in percent?',
  setting: { label: 'loaded wires in the tie', unit: '', low: 1, high: most, step: 1, start: 7 },
  at: 19,
  result: { label: 'left of each one’s current', unit: '%', low: 0, high: 100, step: 5 },
  value: (count) => 100 * between(count, share),
  picture: (count) =>
    bundleSection(
      `${count} wires, packed`,
      { coreMm, outsideMm: wireMm },
      bundleOf(count),
      `${count} wires, ${say(bundleOf(count).diameterMm, 'mm', 2)} across`,
      bundleOf(most).diameterMm,
    ),
  says: (count) =>
    `${count} wires: ${percent(share(count))} is left, ${say(eachOf(count), 'A')} in each, ${say(count * eachOf(count), 'A')} in all. The bundle is ${say(bundleOf(count).diameterMm, 'mm', 2)} across.`,
}
