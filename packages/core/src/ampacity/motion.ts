import { requireBetween, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { type Balance, flowAtConductor } from './balance.ts'
import { conductorDiameterMm, metalOf, requireConductorC, resolveWire } from './resolveWire.ts'
import { steadyConductorC } from './steady.ts'
import { type WireHeat, type WireStore, wireDefaults } from './wire.ts'

/** A wire at constant current: C' dT/dt = heat generated - heat lost. */
export interface Motion {
  readonly b: Balance
  readonly capacityJPerMK: number
  readonly heat20WPerM: number
  /** Steady temperature that it approaches; if there is none within reach, a point past melting that only scales the steps. */
  readonly targetC: number
  readonly tends: boolean
}

/** A steady temperature more than this many K above melting counts as none. */
const beyondMelting = 1000

/** Heat capacity per metre: the conductor and a share of the insulation. */
export function capacityJPerMK(i: WireHeat & WireStore): number {
  const m = metalOf(i)
  const rho = requirePositive('conductorDensityKgPerM3', i.conductorDensityKgPerM3 ?? m.densityKgPerM3.nominal)
  const c = requirePositive('conductorSpecificHeatJPerKgK', i.conductorSpecificHeatJPerKgK ?? m.specificHeatJPerKgK.nominal)
  const rhoI = requireNotNegative('insulationDensityKgPerM3', i.insulationDensityKgPerM3 ?? wireDefaults.insulationDensityKgPerM3)
  const cI = requireNotNegative('insulationSpecificHeatJPerKgK', i.insulationSpecificHeatJPerKgK ?? wireDefaults.insulationSpecificHeatJPerKgK)
  const share = requireBetween('insulationShare', i.insulationShare ?? wireDefaults.insulationShare, 0, 1)
  const d = conductorDiameterMm(i)
  const wall = i.insulationThicknessMm
  const stored = (i.areaMm2 * rho * c + share * rhoI * cI * Math.PI * wall * (d + wall)) / 1e6
  return requirePositive('areaMm2', requireFiniteResult('areaMm2', i.areaMm2, stored))
}

export function motion(b: Balance, capacity: number, currentA: number): Motion {
  const steadyC = steadyConductorC(b, requireNotNegative('currentA', currentA), b.meltingC + beyondMelting)
  const tends = steadyC < b.meltingC + beyondMelting
  return {
    b,
    capacityJPerMK: capacity,
    heat20WPerM: currentA * currentA * b.resistance20OhmPerM,
    targetC: tends ? steadyC : 2 * (b.meltingC + beyondMelting),
    tends,
  }
}

/** Checks wire and store, and sets up the motion at a current. */
export function motionOf(i: WireHeat & WireStore, currentA: number): Motion {
  const b = resolveWire(i)
  return motion(b, capacityJPerMK(i), currentA)
}

/** Rate of change of the conductor's temperature. */
export function rateKPerS(m: Motion, conductorC: number): number {
  return (m.heat20WPerM * (1 + m.b.coefficientPerK * (conductorC - 20)) - flowAtConductor(m.b, conductorC)) / m.capacityJPerMK
}

/** Checks the starting temperature of a wire. */
export function requireInitialC(b: Balance, initialC: number | undefined): number {
  return requireConductorC('initialC', initialC ?? b.ambientC, b)
}
