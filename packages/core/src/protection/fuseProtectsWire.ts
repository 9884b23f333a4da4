import { steadyCurrentA, timeToTemperatureS, type WireHeat, type WireStore } from '../ampacity/index.ts'
import { reachesTemperature } from '../ampacity/inner.ts'
import { DomainError, requireAboveUpTo, requireFinite, requireFiniteResult, requirePositive, UnknownEntryError } from '../errors/index.ts'
import type { FusePoint } from '../tables/index.ts'
import { requireBand } from './fuseBand.ts'
import { type FuseOverWire, matchBand } from './matchBand.ts'
import { protectionDefaults } from './protectionDefaults.ts'

/** Above any fault current of a low-voltage source, in A. */
const largestA = 1e6

/**
 * Whether a fuse opens in time at every current that could hurt its wire.
 *
 * Compares the slow edge of the fuse's band with the wire's time from start to limit, from the wire's continuous current to the prospective current; without that, to the last point of the band. worst is the current with the smallest ratio of the
 * wire's time to the fuse's. If the fuse may never open, that ratio is 0 and worst is the current at which the wire's time is shortest.
 *
 * @equation protects where t_f(I) <= t_w(I) for every I from I_s to I_p; t_w: C' dT/dt = I^2 R(T) - q(T) from T_0 to T_l; t_f log-log between points
 * @symbol I_r - ratedA - A - rating of the fuse
 * @symbol k - ambientFactor - 1 - share of the rating left at the fuse's ambient
 * @symbol m - band.0.multiple - 1 - points of the operating-time band, as multiples of the rating
 * @symbol t_f - band.0.longestS - s - latest the fuse opens at that point; null is never
 * @symbol wire - wire - 1 - the wire as for its steady current and its time to a temperature
 * @symbol T_0 - initialC - C - conductor at the start, that of the air if absent
 * @symbol T_l - limitC - C - temperature limit of the insulation
 * @symbol I_p - prospectiveA - A - largest current that a fault can draw
 * @symbol I_s - result - A - verdict, worst current and the stretches of current without protection
 * @domain ratedA: above 0
 * @domain optional ambientFactor: above 0
 * @domain band.0.multiple: above 0
 * @domain optional band.0.shortestS: above 0
 * @domain optional band.0.longestS: above 0
 * @domain wire.areaMm2: above 0 up to 1e30
 * @domain optional wire.conductorDiameterMm: above 0 up to 1e30
 * @domain optional wire.layFactor: from 1 to 1e30
 * @domain optional wire.resistivity20OhmM: above 0 up to 1e30
 * @domain optional wire.temperatureCoefficient20PerK: from 0 to 1e30
 * @domain wire.insulationThicknessMm: from 0 to 1e30
 * @domain wire.insulationConductivityWPerMK: above 0 up to 1e30
 * @domain optional wire.emissivity: from 0 to 1
 * @domain wire.ambientC: from -173.15 to 1626.85
 * @domain optional wire.airSpeedMPerS: from 0 to 1e30
 * @domain optional wire.pressurePa: from 1000 to 1e30
 * @domain optional wire.solarAbsorbedWPerM: from 0 to 1e30
 * @domain optional wire.filmWPerM2K: above 0 up to 1e30
 * @domain optional wire.conductorDensityKgPerM3: above 0
 * @domain optional wire.conductorSpecificHeatJPerKgK: above 0
 * @domain optional wire.insulationDensityKgPerM3: at least 0
 * @domain optional wire.insulationSpecificHeatJPerKgK: at least 0
 * @domain optional wire.insulationShare: from 0 to 1
 * @domain optional initialC: at least -173.15
 * @domain limitC: at least -173.15
 * @domain optional prospectiveA: above 0 up to 1e6
 * @throws DomainError outside the domain, of the wire too, and for a limit above the melting point of its metal
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * fuseProtectsWire({ ratedA: 10, ambientFactor: 1, band: [{ multiple: 1.35, shortestS: 0.75, longestS: 600 }, { multiple: 6, shortestS: 0.02, longestS: 0.1 }], wire: { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, insulationShare: 0 }, initialC: 30, limitC: 70, prospectiveA: 50 }) // { protects: false, worst: { currentA: 18.606, fuseLongestS: 92.4, wireS: 44.4 }, unprotected: [{ lowA: 17.1703, highA: 25.6734 }] }
 * @source energy balance of a lumped wire; operating-time band of the fuse
 */
export function fuseProtectsWire(i: {
  readonly ratedA: number
  readonly ambientFactor?: number
  readonly band: readonly FusePoint[]
  readonly wire: WireHeat & WireStore
  readonly initialC?: number
  readonly limitC: number
  readonly prospectiveA?: number
}): FuseOverWire {
  return compared(i, false)
}

/** The unprotected ranges of fuseProtectsWire; several times faster where there are none. */
export function fuseGaps(i: Parameters<typeof fuseProtectsWire>[0]): FuseOverWire['unprotected'] {
  return compared(i, true).unprotected
}

function compared(i: Parameters<typeof fuseProtectsWire>[0], gapsOnly: boolean): FuseOverWire {
  const { ambientFactor = protectionDefaults.ambientFactor, band, limitC } = i
  const atAmbientA = requirePositive('ratedA', i.ratedA) * requirePositive('ambientFactor', ambientFactor)
  requireBand(band)
  const lastA = requireFiniteResult('ratedA', i.ratedA, (band.at(-1)?.multiple ?? 1) * atAmbientA)
  const highestA = i.prospectiveA === undefined ? lastA : requireAboveUpTo('prospectiveA', i.prospectiveA, 0, largestA)
  const wire = { ...i.wire, insulationShare: i.wire?.insulationShare ?? protectionDefaults.insulationShare }
  const steadyA = named(() => steadyCurrentA({ ...wire, limitC })) ?? 0
  const initialC = i.initialC === undefined ? wire.ambientC : requireFinite('initialC', i.initialC)
  const isHot = initialC >= limitC
  const motion = { ...wire, currentA: highestA, wantedC: limitC, initialC }
  const wireS = (currentA: number): number | null => (isHot ? 0 : timeToTemperatureS({ ...motion, currentA }))
  const harms = (currentA: number): boolean => isHot || reachesTemperature({ ...motion, currentA })
  // One call up front, so that errors name the field by its path here; the search then changes only the current.
  named(() => reachesTemperature(motion))
  return named(() => matchBand(band, atAmbientA, steadyA, highestA, { wireS, harms, gapsOnly }))
}

/** Renames the wire formulas' parameters in errors: here they are inside "wire". */
function named<T>(run: () => T): T {
  try {
    return run()
  } catch (error) {
    if (error instanceof UnknownEntryError) throw new UnknownEntryError(`wire.${error.parameter}`, error.value, error.known)
    if (!(error instanceof DomainError)) throw error
    const { parameter, value, allowed, source, code } = error
    const own = ownNames[parameter]
    throw new DomainError(own ?? `wire.${parameter}`, value, own === undefined ? allowed : `${allowed}, for this wire`, source, code)
  }
}

const ownNames: Readonly<Record<string, string>> = { initialC: 'initialC', limitC: 'limitC', wantedC: 'limitC', currentA: 'prospectiveA' }
