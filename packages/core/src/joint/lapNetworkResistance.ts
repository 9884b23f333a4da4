import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { couplingPerM, mmPerM, requireConductors, shortestCoupling } from './lapPair.ts'

const oneWetted = 'a list of stretches, at least one of them wetted'

/**
 * Resistance of an overlap that is only partly wetted, or wetted in several pieces: exact stretches in order, joined as a ladder.
 *
 * Each wetted stretch is a tee of two arms and a shunt; shunts and the arms between them are combined by the delta-star transform, so all terms stay positive. One stretch gives lapJointResistanceOhm.
 *
 * @equation arm = (s/lambda) tanh(u/2), shunt = s/(lambda sinh u), arm = s l where not wetted; R = s a b L + a^2 P + b^2 Q + M; a = r1/s, b = r2/s
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - conductor that brings the current
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - conductor that takes it away
 * @symbol l - stretches.0.lengthMm - mm - length of a stretch
 * @symbol g - stretches.0.interfaceSPerM - S/m - conductance of the interface on that stretch, 0 where it is not wetted
 * @symbol P - result - ohm - first arm of the whole ladder; Q is its last arm, M its shunt, R the resistance
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain stretches.0.lengthMm: above 0
 * @domain stretches.0.interfaceSPerM: at least 0
 * @throws DomainError outside the domain, and where no stretch is wetted: nothing joins the conductors
 * @example
 * lapNetworkResistanceOhm({ conductorsOhmPerM: [0.0172, 0.0172], stretches: [{ lengthMm: 4, interfaceSPerM: 1e6 }, { lengthMm: 2, interfaceSPerM: 0 }, { lengthMm: 4, interfaceSPerM: 1e6 }] }) // 0.00023313
 * @source derived: cascade of two-ports; delta-star transformation
 */
export function lapNetworkResistanceOhm(i: {
  readonly conductorsOhmPerM: readonly [number, number]
  readonly stretches: readonly { readonly lengthMm: number; readonly interfaceSPerM: number }[]
}): number {
  const [r1, r2] = requireConductors(i.conductorsOhmPerM)
  if (!Array.isArray(i.stretches)) throw new DomainError('stretches', i.stretches, oneWetted, undefined, i.stretches === undefined ? 'missing' : 'wrong-choice')
  const s = r1 + r2
  let wetted = false
  let length = 0
  let first = 0 // Arm before the shunt.
  let shunt = 0
  let last = 0 // Arm behind the shunt.
  for (let k = 0; k < i.stretches.length; k++) {
    const l = requirePositive(`stretches.${k}.lengthMm`, i.stretches[k]?.lengthMm as number) / mmPerM
    const g = requireNotNegative(`stretches.${k}.interfaceSPerM`, i.stretches[k]?.interfaceSPerM as number)
    length += l
    if (g === 0) {
      if (wetted) last += s * l
      else first += s * l
      continue
    }
    const λ = couplingPerM(g, s)
    const u = λ * l
    const d = -Math.expm1(-u)
    const arm = u < shortestCoupling ? 0.5 * s * l : ((s / λ) * d) / (2 - d)
    const own = u < shortestCoupling ? 1 / (g * l) : ((s / λ) * 2 * (1 - d)) / (d * (2 - d))
    if (wetted) {
      // Two shunts with an arm between them: delta to star.
      const between = last + arm
      const around = shunt + between + own
      first += shunt * (between / around)
      last = arm + own * (between / around)
      shunt *= own / around
    } else {
      first += arm
      shunt = own
      last = arm
      wetted = true
    }
  }
  if (!wetted) throw new DomainError('stretches', i.stretches, oneWetted, undefined, 'wrong-choice')
  const a = s === 0 ? 0 : r1 / s
  const b = s === 0 ? 0 : r2 / s
  return requireFiniteResult('stretches', i.stretches, s * a * b * length + a * a * first + b * b * last + shunt)
}
