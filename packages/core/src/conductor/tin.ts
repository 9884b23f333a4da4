import { DomainError, requireFinite, requireFiniteResult, requireNotNegative, requirePositive, requireWhole } from '../errors/index.ts'
import { conductorDefaults } from './conductorDefaults.ts'
import { resistivityOhmM } from './resistivity.ts'

const mm2PerM2 = 1e6

/**
 * Area of the tin on the strands of a conductor: area of the tinned strand less area of its copper.
 *
 * An even coat on round strands.
 *
 * @equation A = n pi (d - t) t
 * @symbol n - strandCount - 1 - number of strands
 * @symbol d - strandDiameterMm - mm - diameter of one strand over its tin
 * @symbol t - tinThicknessMm - mm - thickness of the tin
 * @symbol A - result - mm2 - area of tin, square to the strands
 * @domain strandCount: whole at least 1
 * @domain strandDiameterMm: above 0
 * @domain tinThicknessMm: at least 0
 * @throws DomainError outside the domain, and for tin thicker than the strand's radius
 * @example
 * tinAreaMm2({ strandCount: 19, strandDiameterMm: 0.25, tinThicknessMm: 0.002 }) // 0.029606
 * @source derived: geometry
 */
export function tinAreaMm2(i: { readonly strandCount: number; readonly strandDiameterMm: number; readonly tinThicknessMm: number }): number {
  requireWhole('strandCount', i.strandCount, 1)
  requirePositive('strandDiameterMm', i.strandDiameterMm)
  requireNotNegative('tinThicknessMm', i.tinThicknessMm)
  if (i.tinThicknessMm > i.strandDiameterMm / 2)
    throw new DomainError('tinThicknessMm', i.tinThicknessMm, 'at most half of "strandDiameterMm"', undefined, 'contradiction')
  return requireFiniteResult('strandDiameterMm', i.strandDiameterMm, i.strandCount * Math.PI * (i.strandDiameterMm - i.tinThicknessMm) * i.tinThicknessMm)
}

/**
 * Resistance of a metre of tinned copper from its two areas: copper and tin in parallel.
 *
 * @equation R' = K/(Acu/rhocu + Asn/rhosn)
 * @symbol Acu - copperAreaMm2 - mm2 - area of the copper alone
 * @symbol Asn - tinAreaMm2 - mm2 - area of the tin
 * @symbol T - temperatureC - C - temperature of both
 * @symbol K - layFactor - 1 - length of a strand over length of the wire
 * @symbol R' - result - ohm/m - resistance per metre of wire
 * @domain copperAreaMm2: above 0
 * @domain tinAreaMm2: at least 0
 * @domain temperatureC: from -60 to 231.93
 * @domain optional layFactor: at least 1
 * @throws DomainError outside the domain; the tin melts at 231.93 degC
 * @example
 * tinnedResistanceOhmPerM({ copperAreaMm2: 0.9, tinAreaMm2: 0.03, temperatureC: 20, layFactor: 1.02 }) // 0.019443
 * @source conductances in parallel; resistivities of the table of metals
 */
export function tinnedResistanceOhmPerM(i: {
  readonly copperAreaMm2: number
  readonly tinAreaMm2: number
  readonly temperatureC: number
  readonly layFactor?: number
}): number {
  requirePositive('copperAreaMm2', i.copperAreaMm2)
  requireNotNegative('tinAreaMm2', i.tinAreaMm2)
  const factor = requireFinite('layFactor', i.layFactor ?? conductorDefaults.layFactor)
  if (factor < 1) throw new DomainError('layFactor', factor, '1 or above: no strand is shorter than its wire')
  const conductanceSM = i.copperAreaMm2 / resistivityOhmM('annealed-copper', i.temperatureC) + i.tinAreaMm2 / resistivityOhmM('tin', i.temperatureC)
  return requireFiniteResult('copperAreaMm2', i.copperAreaMm2, (factor * mm2PerM2) / conductanceSM)
}
