import { DomainError, requireFinite, requireFiniteResult, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { adiabatic } from '../tables/index.ts'

/** Coldest start in °C: lower end of linear resistance. */
const coldestC = -60
/** Melting points in °C, the highest printed in the sources: above, no solid conductor is left. */
const meltingC = { copper: 1084.62, aluminium: 660.32, steel: 1538, lead: 327.46 } as const

function solid(parameter: string, temperatureC: number, melts: number): number {
  if (!(requireFinite(parameter, temperatureC) >= coldestC && temperatureC <= melts)) {
    throw new DomainError(parameter, temperatureC, `from ${coldestC} to ${melts}, where its material melts`)
  }
  return temperatureC
}

/**
 * Gives the short-circuit current that heats a conductor to its final temperature in a time, all heat kept in the metal.
 *
 * Meant for up to 5 s; beyond, heat loss makes it conservative.
 *
 * @equation I = K S sqrt(ln((Tf + beta)/(Ti + beta))/t)
 * @symbol K - material - A s^0.5/mm2 - constant of the metal: copper 226, aluminium 148, steel 78, lead 41, with its beta
 * @symbol S - areaMm2 - mm2 - area of the conductor
 * @symbol t - timeS - s - time until it is switched off
 * @symbol Ti - initialC - C - temperature at the start
 * @symbol Tf - finalC - C - temperature at the end, at least the initial one
 * @symbol I - result - A - current
 * @domain areaMm2: above 0
 * @domain timeS: above 0
 * @domain initialC: at least -60
 * @domain finalC: at least -60
 * @throws DomainError outside the domain, where it ends colder than it starts, and above the melting point
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * adiabaticFaultCurrentA({ areaMm2: 1, timeS: 1, material: 'copper', initialC: 70, finalC: 160 }) // 115.0
 * @source IEC 60949:1988; IEC 60364-5-54, annex A
 */
export function adiabaticFaultCurrentA(i: {
  readonly areaMm2: number
  readonly timeS: number
  readonly material: 'copper' | 'aluminium' | 'steel' | 'lead'
  readonly initialC: number
  readonly finalC: number
}): number {
  const melts = meltingC[i.material]
  if (typeof melts !== 'number') throw new UnknownEntryError('material', i.material, Object.keys(meltingC))
  const { kFactor: K, betaC: beta } = adiabatic.metals[i.material]
  const S = requirePositive('areaMm2', i.areaMm2)
  const t = requirePositive('timeS', i.timeS)
  const Ti = solid('initialC', i.initialC, melts)
  const Tf = solid('finalC', i.finalC, melts)
  if (Tf < Ti) throw new DomainError('finalC', Tf, `at least initialC, ${Ti}`, undefined, 'contradiction')
  return requireFiniteResult('timeS', t, K * S * Math.sqrt(Math.log1p((Tf - Ti) / (Ti + beta)) / t))
}
