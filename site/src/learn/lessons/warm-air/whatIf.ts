import { ambientFactor } from '@strandwise/core/ampacity'
import { bars } from '../../draw/bars.ts'
import { percent, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { atWorkshopA, limitC, low, workshopC } from './inCode.ts'

const factor = (ambientC: number): number => ambientFactor({ limitC, ambientC, referenceAmbientC: workshopC })

const coolestC = 20

export const whatIf: WhatIf = {
  title: 'What if the air were another?',
  ask: 'The fan is moved to a loft of 50 °C. How much of its current, in percent, may the wire still carry?',
  setting: { label: 'air', unit: '°C', low: coolestC, high: 69, step: 1, start: 60 },
  at: 50,
  result: { label: 'current left', unit: '%', low: 0, high: 120, step: 5 },
  value: (ambientC) => 100 * factor(ambientC),
  picture: (ambientC) =>
    bars(
      `Current of the wire in air of ${ambientC} °C`,
      [
        { name: `in ${workshopC} °C`, value: atWorkshopA, text: say(atWorkshopA, 'A') },
        { name: `in ${ambientC} °C, by the heat balance`, value: low(ambientC, limitC), text: say(low(ambientC, limitC), 'A'), kind: 'solder' },
      ],
      undefined,
      low(coolestC, limitC),
    ),
  says: (ambientC) =>
    `Air of ${ambientC} °C leaves ${limitC - ambientC} K up to the limit: ${percent(factor(ambientC))} of the current by the root, ${percent(low(ambientC, limitC) / atWorkshopA)} by the heat balance.`,
}
