import { bars } from '../../draw/bars.ts'
import { figures, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { held, heldS, liquidusC } from './inCode.ts'

const wire = (airC: number): number => held(airC).jointAtToolOffC

export const whatIf: WhatIf = {
  title: 'What if the air were hotter?',
  ask: `Air of 300 °C, held for ${heldS} s. What does the wire under the ring come to?`,
  setting: { label: 'air at the sleeve', unit: '°C', low: 150, high: 450, step: 10, start: 240 },
  at: 300,
  result: { label: `the wire after ${heldS} s`, unit: '°C', low: 0, high: 300, step: 10 },
  limits: [{ name: `alloy liquid, ${figures(liquidusC, 3)} °C`, y: liquidusC, hot: false }],
  value: wire,
  picture: (airC) => {
    const { ringMeltsAtS, wettedAtS } = held(airC)
    const never = `not in ${heldS} s`
    return bars(
      `Ring and wire in air of ${airC} °C`,
      [
        { name: 'ring melts after', value: ringMeltsAtS ?? heldS, text: ringMeltsAtS === null ? never : say(ringMeltsAtS, 's', 2), kind: 'solder' },
        { name: 'wire takes the solder after', value: wettedAtS ?? heldS, text: wettedAtS === null ? never : say(wettedAtS, 's', 2) },
      ],
      undefined,
      heldS,
    )
  },
  says: (airC) => {
    const { ringMeltsAtS, wettedAtS } = held(airC)
    const ring = ringMeltsAtS === null ? 'the ring does not melt' : `the ring melts after ${say(ringMeltsAtS, 's', 2)}`
    const joined = wettedAtS === null ? `in ${heldS} s the solder does not take` : `the solder takes after ${say(wettedAtS, 's', 2)}`
    return `Air of ${airC} °C: ${ring}; the wire comes to ${Math.round(wire(airC))} °C; ${joined}.`
  },
}
