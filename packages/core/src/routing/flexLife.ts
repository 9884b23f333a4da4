import { DomainError, requireFinite, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { flexLifeDefaults } from './routingDefaults.ts'

/** One bend and back is two reversals. */
const reversalsPerCycle = 2

/**
 * How often a strand can be bent back and forth before it breaks, as a band: nominal cycles, and those divided and multiplied by the scatter.
 *
 * The plastic part of the strain-life law alone: below a strain of some thousandths it underestimates copper; a nick, solder at the edge of the bend or corrosion shortens life far more than the scatter.
 *
 * @equation N = (e/e_f)^(1/c)/2
 * @symbol e - strainAmplitude - 1 - strain amplitude, half of the whole swing
 * @symbol e_f - ductilityCoefficient - 1 - fatigue ductility coefficient
 * @symbol c - ductilityExponent - 1 - fatigue ductility exponent, negative
 * @symbol s - scatterFactor - 1 - low is N/s, high is N s
 * @symbol N - result.cycles - 1 - cycles to the break
 * @domain strainAmplitude: above 0
 * @domain optional ductilityCoefficient: above 0
 * @domain optional ductilityExponent: below 0
 * @domain optional scatterFactor: at least 1
 * @throws DomainError outside the domain
 * @example
 * flexLifeCycles({ strainAmplitude: 0.01, ductilityCoefficient: 0.3, ductilityExponent: -0.6, scatterFactor: 3 }) // { low: 48.27, cycles: 144.8, high: 434.5 }
 * @source Strain-life law of Coffin and Manson, from memory; the defaults are those of annealed copper, from memory
 */
export function flexLifeCycles(i: {
  readonly strainAmplitude: number
  readonly ductilityCoefficient?: number
  readonly ductilityExponent?: number
  readonly scatterFactor?: number
}): { readonly low: number; readonly cycles: number; readonly high: number } {
  const e = requirePositive('strainAmplitude', i.strainAmplitude)
  const e_f = requirePositive('ductilityCoefficient', i.ductilityCoefficient ?? flexLifeDefaults.ductilityCoefficient)
  const c = requireFinite('ductilityExponent', i.ductilityExponent ?? flexLifeDefaults.ductilityExponent)
  if (c >= 0) throw new DomainError('ductilityExponent', c, 'below 0')
  const s = requireFinite('scatterFactor', i.scatterFactor ?? flexLifeDefaults.scatterFactor)
  if (s < 1) throw new DomainError('scatterFactor', s, 'at least 1')
  const cycles = requireFiniteResult('strainAmplitude', e, (e / e_f) ** (1 / c) / reversalsPerCycle)
  return { low: cycles / s, cycles, high: requireFiniteResult('scatterFactor', s, cycles * s) }
}
