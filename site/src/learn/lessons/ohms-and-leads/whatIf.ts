import { readingInterval } from '@strandwise/core/meter'
import { intervals } from '../../draw/intervals.ts'
import { say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { allowedOhm, leads, meter, readingOhm } from './inCode.ts'

const left = (resolution: number) => readingInterval({ reading: readingOhm, ...meter, resolution, ...leads })
const coarsest = left(meter.resolution)
const halfWidth = (resolution: number): number => (left(resolution).high - left(resolution).low) / 2

export const whatIf: WhatIf = {
  title: 'What if the meter were finer?',
  ask: 'The same reading on a meter whose last digit is ten times finer, 0.01 Ω. By how many milliohms either way is the joint still unknown?',
  setting: { label: 'last digit', unit: 'mΩ', low: 1, high: 100, step: 1, start: 100 },
  at: 10,
  result: { label: 'unknown either way', unit: 'mΩ', low: 0, high: 500, step: 10 },
  limits: [{ name: `allowed in the joint, ${say(allowedOhm, 'Ω')}`, y: 1000 * allowedOhm, hot: false }],
  value: (digit) => 1000 * halfWidth(digit / 1000),
  picture: (digit) => {
    const { low, high } = left(digit / 1000)
    return intervals(
      `What the reading leaves for the joint: ${say(low, 'Ω', 2)} to ${say(high, 'Ω', 2)}`,
      [{ name: 'the joint', low, high, text: `${say(low, 'Ω', 2)} to ${say(high, 'Ω', 2)}` }],
      { value: allowedOhm, text: `allowed ${say(allowedOhm, 'Ω')}` },
      [coarsest.low, coarsest.high],
    )
  },
  says: (digit) =>
    `Last digit ${say(digit / 1000, 'Ω', 2)}: unknown by ${say(halfWidth(digit / 1000), 'Ω')} either way. ${say(leads.leadUncertaintyOhm, 'Ω')} of it is the leads, and no digit takes that away.`,
}
