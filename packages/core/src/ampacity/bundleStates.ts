import { NoSteadyStateError, requireNotNegative } from '../errors/index.ts'
import { type BundleCaseName, bundleCases, type WireBundle } from './bundleBalance.ts'
import { currentAtCeiling, steadyConductorC, steadyWithin } from './steady.ts'

/** Steady state of one case. */
export interface BundleState {
  readonly name: BundleCaseName
  readonly outsideMm: number
  readonly centreC: number
  readonly surfaceC: number
}

function stateOf({ name, balance: b }: ReturnType<typeof bundleCases>[0], currentA: number): BundleState {
  const centreC = steadyConductorC(b, currentA, b.meltingC)
  return { name, outsideMm: 1000 * b.outsideM, centreC, surfaceC: b.ambientC + b.riseK }
}

/**
 * Gives the steady state of a bundle's three cases: as given, the loaded wires packed, one wire alone.
 *
 * bundleTemperatureC takes the hottest of them.
 *
 * @equation n I^2 R20 (1 + alpha (Tc - 20)) = q = convection + radiation - sun at the surface; Tc = Ts + q/(4 pi kb) + q ln(D/Dc)/(2 pi kb)
 * @symbol I - currentA - A - current in each loaded wire
 * @symbol n - loadedWires - 1 - wires that carry it
 * @symbol D - bundleOutsideMm - mm - outside diameter of the bundle; absent, the hull of the loaded wires over pi
 * @symbol Dc - core - mm - outside of the loaded wires, sqrt(n/0.8) diameters of one, at most D
 * @symbol kb - bundleConductivityWPerMK - W/(m K) - conductivity across the bundle, walls and air included
 * @symbol Tc - result - C - middle of each case, with its surface and outside
 * @domain as bundleTemperatureC
 * @throws DomainError outside the domain, and for a bundle too thin to hold its wires
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where one of the three has none, with the current that suits all three
 * @example
 * bundleStates({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 8, loadedWires: 2, bundleOutsideMm: 40 }) // [{ name: 'bundle', outsideMm: 40, centreC: 37.55, surfaceC: 32.14 }, { name: 'packed', outsideMm: 3.6815, centreC: 43.29, surfaceC: 42.33 }, { name: 'alone', outsideMm: 2.3284, centreC: 39.36, surfaceC: 38.56 }]
 * @source derived: round heat source in the middle of a cylinder, Fourier; surface as for one wire
 */
export function bundleStates(i: WireBundle & { readonly currentA: number }): readonly [BundleState, BundleState, BundleState] {
  const cases = bundleCases(i)
  requireNotNegative('currentA', i.currentA)
  const { meltingC } = cases[0].balance
  const states = [stateOf(cases[0], i.currentA), stateOf(cases[1], i.currentA), stateOf(cases[2], i.currentA)] as const
  if (states.every(({ centreC }) => steadyWithin(centreC, meltingC))) return states
  const cause = states.some(({ centreC }) => Number.isNaN(centreC)) ? 'runaway' : 'ceiling'
  throw new NoSteadyStateError(cause, Math.min(...cases.map(({ balance }) => currentAtCeiling(balance, meltingC))), meltingC)
}

/** The hottest of the three cases. */
export function hottest(states: readonly [BundleState, BundleState, BundleState]): BundleState {
  let found: BundleState = states[0]
  for (const state of states) if (state.centreC > found.centreC) found = state
  return found
}
