import { voltageDropV } from '@strandwise/core/circuit'
import { resistanceOhmPerM } from '@strandwise/core/conductor'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const areas = [0.75, 1, 1.5, 2.5] as const
const lengths = [6, 8, 11, 14, 18] as const
const currents = [3, 5, 7, 9] as const
const joints = [4, 6, 12] as const
const footM = 0.3048

export const sheets: Sheets = {
  title: 'Where the volts go',
  problem(stream, form) {
    const areaMm2 = oneOf(areas, stream)
    const lengthM = oneOf(lengths, stream)
    const currentA = oneOf(currents, stream)
    const jointMOhm = oneOf(joints, stream)
    const mOhmPerM = Number((1000 * resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20 })).toFixed(1))
    const oneWayOhm = (mOhmPerM * lengthM) / 1000
    const wireV = voltageDropV({ currentA, outResistanceOhm: oneWayOhm, returnResistanceOhm: oneWayOhm })
    const jointV = (currentA * jointMOhm) / 1000
    const far = form === 'C' ? `${(lengthM / footM).toFixed(1)} ft` : `${lengthM} m`
    const feet = form === 'C' ? [{ value: wireV / footM, says: 'took feet for metres', marks: 1 }] : []
    return {
      given: `Lamps stand ${far} from the battery and draw ${currentA} A. One metre of one wire has ${mOhmPerM} mΩ. One joint on the way has ${jointMOhm} mΩ.`,
      tasks: [
        {
          ask: 'How many volts are lost in the wire, out and back?',
          unit: 'V',
          answer: wireV,
          box: 'drop = current × ohms of one metre × metres × 2',
          usual: [{ value: wireV / 2, says: 'forgot the return', marks: 1 }, { value: 1000 * wireV, says: 'took milliohms for ohms', marks: 1 }, ...feet],
        },
        {
          ask: 'How many millivolts are lost in the joint?',
          unit: 'mV',
          answer: 1000 * jointV,
          box: 'drop = current × ohms of the joint',
          usual: [
            { value: jointV, says: 'gave volts as millivolts', marks: 1 },
            { value: jointMOhm / currentA, says: 'divided by the current', marks: 0 },
          ],
        },
        {
          ask: 'Which share of all that is lost is the joint’s?',
          unit: '%',
          answer: (100 * jointV) / (wireV + jointV),
          box: 'share = joint ÷ (wire + joint)',
          usual: [
            { value: (100 * jointV) / (wireV / 2 + jointV), says: 'forgot the return', marks: 1 },
            { value: jointV / (wireV + jointV), says: 'gave the share as a number, not in percent', marks: 1 },
          ],
        },
      ],
    }
  },
  trap: 'the distance stands in feet',
  why: {
    ask: 'the joint is warm and the lamps are dim. Your colleague remakes the joint. Will the lamps be bright?',
    points: [
      'the volts are found by reading each stretch under load',
      'a long thin cable loses more than any fair joint, and it counts twice, out and back',
      'only a thicker or a shorter cable brings them back',
    ],
  },
}
