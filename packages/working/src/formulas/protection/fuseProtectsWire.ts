import { fuseProtectsWire, protectionDefaults } from '@strandwise/core/protection'
import { type SolvedTerm, solved } from '../formula.ts'
import { derived } from '../sources.ts'

type Given = Parameters<typeof fuseProtectsWire>[0]

function terms(i: Given): readonly SolvedTerm[] {
  const { worst, unprotected } = fuseProtectsWire(i)
  return [
    ...(worst.fuseLongestS === null ? [] : [{ text: 'latest that the fuse opens there', tex: 't_f', value: worst.fuseLongestS, unit: 's' }]),
    ...(worst.wireS === null ? [] : [{ text: 'time that the wire takes to its limit there', tex: 't_w', value: worst.wireS, unit: 's' }]),
    ...(worst.fuseLongestS === null || worst.wireS === null
      ? []
      : [{ text: "margin: the wire's time over the fuse's", tex: '\\frac{t_w}{t_f}', value: worst.wireS / worst.fuseLongestS, unit: '1' }]),
    ...unprotected.flatMap(({ lowA, highA }) => [
      { text: 'without protection from', tex: 'I_{low}', value: lowA, unit: 'A' },
      { text: 'without protection up to', tex: 'I_{high}', value: highA, unit: 'A' },
    ]),
  ]
}

/** The working of fuseProtectsWire: its value is the current at which fuse and wire come nearest, or worst. */
export const fuseProtectsWireFormula = solved<Given>({
  id: 'fuseProtectsWire',
  call: fuseProtectsWire,
  name: 'I_worst',
  tex: 'I_{worst}',
  unit: 'A',
  equationTex: 't_f(I) \\le t_w(I)\\quad\\text{for every}\\ I\\ \\text{from}\\ I_s\\ \\text{to}\\ I_p',
  equation: 't_f(I) <= t_w(I) for every I from the steady limit of the wire to the prospective current',
  symbols: (i) => ({
    I_r: { tex: 'I_r', unit: 'A', of: 'ratedA', meaning: 'rating of the fuse' },
    k: { tex: 'k', unit: '1', of: () => i.ambientFactor ?? protectionDefaults.ambientFactor, meaning: 'share of the rating left in its surroundings' },
    A: { tex: 'A', unit: 'mm²', of: 'wire.areaMm2', meaning: 'area of the wire' },
    theta_0: { tex: '\\theta_0', unit: '°C', of: () => i.initialC ?? i.wire.ambientC, meaning: 'conductor at the start' },
    theta_l: { tex: '\\theta_l', unit: '°C', of: 'limitC', meaning: 'what the insulation stands' },
    ...(i.prospectiveA === undefined ? {} : { I_p: { tex: 'I_p', unit: 'A', of: 'prospectiveA', meaning: 'largest current that a fault can draw' } }),
  }),
  solution: (i) => {
    const { protects, worst } = fuseProtectsWire(i)
    return { value: worst.currentA, terms: terms(i), notes: [protects ? 'the fuse protects the wire' : 'the fuse does not protect the wire at every current'] }
  },
  source: derived('energy balance of a lumped wire against the slow edge of the operating-time band of the fuse'),
  validity: ['between the points of the band the times are log-log', 'the insulation takes no heat unless its share is given'],
})
