import { intervals } from '../../draw/intervals.ts'
import { figures, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { goodOhm, oneEndOhm, read, spanMm, wireOhm } from './inCode.ts'

const apart = (currentA: number): number => {
  const [good, bad] = [read(goodOhm, currentA), read(oneEndOhm, currentA)]
  const unknown = (good.high - good.low) / 2 + (bad.high - bad.low) / 2
  return (currentA * (oneEndOhm - goodOhm)) / unknown
}
const milli = (value: number): string => `${figures(1000 * value, 2)} mV`

export const whatIf: WhatIf = {
  title: 'What if more current were sent?',
  ask: 'P and R read alike at 2 A. With 10 A: how many times larger is their difference than what the meter leaves open? Above one they are told apart.',
  setting: { label: 'test current', unit: 'A', low: 1, high: 20, step: 0.5, start: 2 },
  at: 10,
  result: { label: 'difference over what is open', unit: 'times', low: 0, high: 3, step: 0.1 },
  limits: [{ name: 'told apart', y: 1, hot: false }],
  value: apart,
  picture: (currentA) => {
    const [good, bad] = [read(goodOhm, currentA), read(oneEndOhm, currentA)]
    return intervals(
      `P and R at ${currentA} A`,
      [
        { name: 'P', low: good.low, high: good.high, text: `${milli(good.low)} to ${milli(good.high)}` },
        { name: 'R', low: bad.low, high: bad.high, text: `${milli(bad.low)} to ${milli(bad.high)}` },
      ],
      { value: wireOhm(spanMm) * currentA, text: `plain wire ${milli(wireOhm(spanMm) * currentA)}` },
    )
  },
  says: (currentA) =>
    `At ${figures(currentA, 2)} A P and R differ by ${say(currentA * (oneEndOhm - goodOhm), 'V', 2)}, ${figures(apart(currentA), 2)} times what the meter leaves open: ${apart(currentA) > 1 ? 'told apart' : 'alike'}.`,
}
