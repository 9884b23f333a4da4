import { fuseProtectsWire } from '@strandwise/core/protection'
import { intervals } from '../../draw/intervals.ts'
import { say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { fuseA, limitC, pair, wire } from './inCode.ts'

const zone = (areaMm2: number) => fuseProtectsWire({ ...pair, wire: { ...wire, areaMm2 } }).unprotected[0]
const widthA = (areaMm2: number): number => {
  const found = zone(areaMm2)
  return found === undefined ? 0 : found.highA - found.lowA
}

const thinnestMm2 = 0.5
const widestA = zone(thinnestMm2)?.highA ?? 0

export const whatIf: WhatIf = {
  title: 'What if the wire were thicker?',
  ask: `The same ${fuseA} A fuse, but a wire of 1.5 mm². How many amperes wide is the zone in which nothing guards the wire?`,
  setting: { label: 'area of the wire', unit: 'mm²', low: thinnestMm2, high: 3, step: 0.25, start: 1 },
  at: 1.5,
  result: { label: 'zone without guard', unit: 'A', low: 0, high: 40, step: 1 },
  value: widthA,
  picture: (areaMm2) => {
    const found = zone(areaMm2)
    const text = found === undefined ? 'none' : `${say(found.lowA, 'A')} to ${say(found.highA, 'A')}`
    return intervals(
      `Zone without guard at ${areaMm2} mm²: ${text}`,
      [{ name: `zone without guard, ${areaMm2} mm²`, low: found?.lowA ?? 0, high: found?.highA ?? 0, text }],
      { value: fuseA, text: `fuse ${fuseA} A` },
      [widestA],
    )
  },
  says: (areaMm2) => {
    const found = zone(areaMm2)
    return found === undefined
      ? `${areaMm2} mm²: the ${fuseA} A fuse guards this wire at every current.`
      : `${areaMm2} mm²: from ${say(found.lowA, 'A')} to ${say(found.highA, 'A')} the wire passes ${limitC} °C before the fuse is sure to open.`
  },
}
