import { DomainError, NoSteadyStateError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { changesOver, cycleStart, type Step } from './cycleStart.ts'
import { capacityJPerMK, motion, requireInitialC } from './motion.ts'
import { resolveWire } from './resolveWire.ts'
import { currentAtConductor } from './steady.ts'
import { type WireHeat, type WireStore, wireDefaults } from './wire.ts'

/**
 * Gives the temperature of the conductor at the end of each step of a list of currents, and its peak; once, or in the periodic steady state.
 *
 * @equation C' dT/dt = I^2 R20 (1 + alpha (T - 20)) - q(T) in each step; repeated: T(end) = T(start)
 * @symbol I - steps - A - current and time of each step
 * @symbol T0 - initialC - C - temperature at the start, that of the air if absent; a repeated list forgets it
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol d - conductorDiameterMm - mm - diameter of the conductor, a solid round of the area if absent
 * @symbol K - layFactor - 1 - length of a strand over length of the wire, in R20
 * @symbol rho20 - resistivity20OhmM - ohm m - resistivity at 20 C, in R20 = rho20 K/A
 * @symbol alpha - temperatureCoefficient20PerK - 1/K - temperature coefficient at 20 C
 * @symbol w - insulationThicknessMm - mm - wall of the insulation, D = d + 2 w
 * @symbol k - insulationConductivityWPerMK - W/(m K) - conductivity of the wall
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol Ta - ambientC - C - temperature of the air and the surroundings
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol sun - solarAbsorbedWPerM - W/m - sunshine that the surface absorbs
 * @symbol h - filmWPerM2K - W/(m2 K) - film coefficient in place of convection and radiation
 * @symbol rho_c - conductorDensityKgPerM3 - kg/m3 - density of the conductor
 * @symbol c_c - conductorSpecificHeatJPerKgK - J/(kg K) - specific heat of the conductor
 * @symbol rho_i - insulationDensityKgPerM3 - kg/m3 - density of the insulation
 * @symbol c_i - insulationSpecificHeatJPerKgK - J/(kg K) - specific heat of the insulation
 * @symbol s - insulationShare - 1 - share of the insulation that follows the conductor
 * @symbol T - result - C - temperatures at the ends, and the peak with the start
 * @domain steps.0.currentA: at least 0
 * @domain steps.0.timeS: at least 0
 * @domain optional initialC: at least -173.15
 * @domain areaMm2: above 0
 * @domain optional conductorDiameterMm: above 0
 * @domain optional layFactor: at least 1
 * @domain optional resistivity20OhmM: above 0
 * @domain optional temperatureCoefficient20PerK: at least 0
 * @domain insulationThicknessMm: at least 0
 * @domain insulationConductivityWPerMK: above 0
 * @domain optional emissivity: from 0 to 1
 * @domain ambientC: from -173.15 to 1626.85
 * @domain optional airSpeedMPerS: at least 0
 * @domain optional pressurePa: at least 1000
 * @domain optional solarAbsorbedWPerM: at least 0
 * @domain optional filmWPerM2K: above 0
 * @domain optional conductorDensityKgPerM3: above 0
 * @domain optional conductorSpecificHeatJPerKgK: above 0
 * @domain optional insulationDensityKgPerM3: at least 0
 * @domain optional insulationSpecificHeatJPerKgK: at least 0
 * @domain optional insulationShare: from 0 to 1
 * @throws DomainError outside the domain, for an empty list, and where the metal melts on the way
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where a repeated list never settles below the melting point
 * @example
 * temperatureOverStepsC({
 *   areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, initialC: 30,
 *   steps: [{ currentA: 30, timeS: 20 }, { currentA: 0, timeS: 40 }],
 *   repeated: true,
 * }) // { endsC: [88.7, 55.76], peakC: 88.7 }
 * @source Lumped wire: heat balance of one conductor, q as if steady at each temperature
 */
export function temperatureOverStepsC(i: WireHeat & WireStore & { readonly steps: readonly Step[]; readonly repeated?: boolean; readonly initialC?: number }): {
  readonly endsC: readonly number[]
  readonly peakC: number
} {
  const b = resolveWire(i)
  const capacity = capacityJPerMK(i)
  const { steps } = i
  if (!Array.isArray(steps) || steps.length === 0)
    throw new DomainError('steps', steps, 'at least one step', undefined, steps === undefined ? 'missing' : 'out-of-range')
  const initialC = requireInitialC(b, i.initialC)
  const repeated = i.repeated ?? wireDefaults.repeated
  let total = 0
  const motions = steps.map((step: Step, index) => {
    const currentA = requireNotNegative(`steps.${index}.currentA`, step?.currentA)
    total += requireNotNegative(`steps.${index}.timeS`, step?.timeS)
    return motion({ ...b }, capacity, currentA)
  })
  if (repeated && !(total > 0)) throw new DomainError('steps', steps, 'steps that take some time, where they repeat', undefined, 'out-of-range')
  const startC = repeated ? cycleStart(motions, steps, b.ambientC, b.meltingC) : initialC
  if (!(startC < Infinity)) throw new NoSteadyStateError('ceiling', currentAtConductor(b, b.meltingC) ?? 0, b.meltingC)
  let endC = startC
  const endsC = changesOver(motions, steps, startC).map((change) => {
    endC += change
    return endC
  })
  const melted = endsC.indexOf(Infinity)
  if (melted !== -1) {
    throw new DomainError(`steps.${melted}.timeS`, steps[melted]?.timeS, `times before the conductor reaches ${b.meltingC} °C, where its metal melts`)
  }
  for (const [index, endC] of endsC.entries()) requireFiniteResult(`steps.${index}.timeS`, steps[index]?.timeS, endC)
  return { endsC, peakC: repeated ? Math.max(...endsC) : Math.max(startC, ...endsC) }
}
