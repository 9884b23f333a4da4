import { requireBetween, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { type Balance, flowAtConductor } from './balance.ts'
import { conductorDiameterMm, metalOf, requireConductorC, resolveWire } from './resolveWire.ts'
import { steadyConductorC } from './steady.ts'
import { type WireHeat, type WireStore, wireDefaults } from './wire.ts'

/** A wire under one steady current: C' dT/dt = heat made - heat shed. */
export interface Motion {
  readonly b: Balance
  readonly capacityJPerMK: number
  readonly heat20WPerM: number
  /** Where it tends; without a steady temperature within reach, a point past melting that only scales the steps. */
  readonly targetC: number
  readonly tends: boolean
}

/** Past the melting point by this much, in K, a steady temperature is as good as none. */
const beyondMelting = 1000

/** Heat stored in one metre for each kelvin: the conductor, and a share of the insulation. */
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

/** Checked wire and store, moving under a current. */
export function motionOf(i: WireHeat & WireStore, currentA: number): Motion {
  const b = resolveWire(i)
  return motion(b, capacityJPerMK(i), currentA)
}

/** Rate of the conductor in K/s. */
export function rateKPerS(m: Motion, conductorC: number): number {
  return (m.heat20WPerM * (1 + m.b.coefficientPerK * (conductorC - 20)) - flowAtConductor(m.b, conductorC)) / m.capacityJPerMK
}

/** A temperature a wire may begin with. */
export function requireInitialC(b: Balance, initialC: number | undefined): number {
  return requireConductorC('initialC', initialC ?? b.ambientC, b)
}
