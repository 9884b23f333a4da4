import { voltageDropV } from '@strandwise/core/circuit'
import { resistanceOhm } from '@strandwise/core/conductor'
import { bars } from '../../draw/bars.ts'
import { percent } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { allowedV, currentA, jointOhm, lengthM, supplyV, wire } from './inCode.ts'

const oneWay = (areaMm2: number): number => resistanceOhm({ ...wire, areaMm2, lengthM })
const drop = (areaMm2: number): number =>
  voltageDropV({ currentA, outResistanceOhm: oneWay(areaMm2), returnResistanceOhm: oneWay(areaMm2), jointsOhm: [jointOhm] })

const thinnestMm2 = 1
const volt = (value: number): string => `${value.toFixed(2)} V`

export const whatIf: WhatIf = {
  title: 'What if the cable were thicker?',
  ask: 'The cable is replaced by 6 mm², the joint stays as it is. How many volts are lost now?',
  setting: { label: 'area of the wire', unit: 'mm²', low: thinnestMm2, high: 16, step: 0.5, start: 1.5 },
  at: 6,
  result: { label: 'volts lost', unit: 'V', low: 0, high: 5, step: 0.1 },
  limits: [{ name: `allowed ${volt(allowedV)}`, y: allowedV, hot: false }],
  value: drop,
  picture: (areaMm2) =>
    bars(
      `Volts lost with ${areaMm2} mm²`,
      [
        { name: 'out', value: currentA * oneWay(areaMm2), text: volt(currentA * oneWay(areaMm2)) },
        { name: 'joint', value: currentA * jointOhm, text: volt(currentA * jointOhm), kind: 'solder' },
        { name: 'back', value: currentA * oneWay(areaMm2), text: volt(currentA * oneWay(areaMm2)) },
      ],
      undefined,
      currentA * oneWay(thinnestMm2),
    ),
  says: (areaMm2) =>
    `${areaMm2} mm²: ${volt(drop(areaMm2))} lost, ${volt(supplyV - drop(areaMm2))} left for the lamps; the joint is ${percent((currentA * jointOhm) / drop(areaMm2))} of the loss.`,
}
