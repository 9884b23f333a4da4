import { dropTestVerdict, readingInterval, twoWireProof } from '@strandwise/core/meter'
import type { Mistake } from '../../lesson/lesson.ts'
import { figures, say } from '../../lesson/say.ts'
import { byDropHighV, dropTest, meter, readingOhm, twoWire, workingA } from './inCode.ts'

const ohm = (value: number): string => `${figures(value, 2)} Ω`
const volt = (value: number): string => say(value, 'V', 2)

const heavyA = 20
const zero = readingInterval({ reading: 0, ...meter })
const tinyA = 0.002
const tiny = dropTestVerdict({ ...dropTest, measuredV: 0.0001, uncertaintyV: 0.0003, testA: tinyA })
const notNulled = twoWireProof({ ...twoWire, meter: { percentOfReading: 0, counts: 0, resolutionOhm: meter.resolution } })

/** Common mistakes with readings of small resistances. */
export const mistakes: readonly Mistake[] = [
  {
    title: 'Leads left in',
    verdict: 'unsound',
    done: `The ${readingOhm} Ω is taken as the joint, and the joint is cut out.`,
    costs: `A good joint is condemned: by that reckoning it drops ${volt(notNulled.dropHighV)}.`,
    value: { name: 'drop reckoned against drop measured', text: `${volt(notNulled.dropHighV)} against ${say(byDropHighV, 'V', 2)}` },
    instead: 'Tips together first, and take that off.',
  },
  {
    title: 'Zero is not good',
    verdict: 'unsound',
    done: `The meter shows 0.0 Ω over a joint that carries ${heavyA} A. It is called good.`,
    costs: `Up to ${volt(zero.high * heavyA)} may be lost in it, and ${say(zero.high * heavyA ** 2, 'W', 2)} of heat.`,
    value: { name: 'what 0.0 Ω leaves open', text: `up to ${ohm(zero.high)}` },
    instead: 'For large currents only the drop under load says anything.',
  },
  {
    title: 'Too little current',
    verdict: 'caution',
    done: `The drop is read with ${say(tinyA, 'A', 1)}, as an ohms range sends.`,
    costs: `Scaled up it says ${volt(tiny.dropLowV)} to ${volt(tiny.dropHighV)}: ${tiny.verdict} again.`,
    value: { name: 'one count, scaled to the working current', text: volt((0.0001 * workingA) / tinyA) },
    instead: 'Test near the working current.',
  },
]
