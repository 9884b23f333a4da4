import { requireBetween } from '../errors/index.ts'

/** Standard atmosphere up to 11 km: sea-level temperature in K, lapse in K/m, gas constant of air in J/(kg K), free fall in m/s2. */
const seaLevelK = 288.15
const lapseKPerM = 0.0065
const airGasConstantJPerKgK = 287.05287
const freeFallMPerS2 = 9.80665
const tropopauseM = 11000
/** Exponent of air density against the temperature ratio. */
const densityExponent = freeFallMPerS2 / (airGasConstantJPerKgK * lapseKPerM) - 1

/**
 * Gives the share of its sea-level current that a wire keeps in the thin air of a height, as if it shed heat by laminar convection alone.
 *
 * Derived, and it over-derates: radiation does not thin with the air (the aircraft circular reads 0.91 at 6096 m).
 * Verdicts use the air pressure in the heat balance instead.
 *
 * @equation F = (1 - 0.0065 h/288.15)^(4.2559/4)
 * @symbol h - altitudeM - m - geopotential altitude
 * @symbol F - result - 1 - factor on the current
 * @domain altitudeM: from 0 to 11000
 * @throws DomainError outside the domain
 * @example
 * altitudeFactor({ altitudeM: 6096 }) // 0.8544
 * @source ISO 2533, standard atmosphere; film coefficient as the square root of density, current as its fourth root
 */
export function altitudeFactor(i: { readonly altitudeM: number }): number {
  const h = requireBetween('altitudeM', i.altitudeM, 0, tropopauseM, 'ISO 2533, troposphere')
  return (1 - (lapseKPerM * h) / seaLevelK) ** (densityExponent / 4)
}
