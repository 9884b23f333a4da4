import { DomainError, requireChoice, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/** Kinds of load: constant current, fixed resistance, or constant power such as a converter. */
export type Load =
  | { readonly kind: 'current'; readonly currentA: number }
  | { readonly kind: 'resistance'; readonly resistanceOhm: number }
  | { readonly kind: 'power'; readonly powerW: number }

const kinds = ['current', 'resistance', 'power'] as const
/** Significant digits of a limit in an error message. */
const toldDigits = 12

/**
 * The current that a load draws from its source through the resistance of the run.
 *
 * A load of constant power has two operating points; the one with the higher load voltage is stable and is the answer.
 *
 * @equation current: I; resistance: I = V/(R_s + R); power: I = 2 P/(V + sqrt(V^2 - 4 R_s P))
 * @symbol V - supplyV - V - source voltage
 * @symbol R_s - seriesOhm - ohm - source, wires and joints in series
 * @symbol R - load.resistanceOhm - ohm - of a load of fixed resistance
 * @symbol P - load.powerW - W - taken by a load of constant power
 * @symbol I - result - A - current in the loop; load.currentA where that is given
 * @domain supplyV: above 0
 * @domain seriesOhm: at least 0
 * @domain optional load.currentA: at least 0
 * @domain optional load.resistanceOhm: at least 0
 * @domain optional load.powerW: at least 0
 * @throws DomainError outside the domain; where the run cannot deliver the power, naming the largest power; where a constant current drops more than the supply; where nothing limits the current
 * @example
 * loadCurrentA({ supplyV: 12, seriesOhm: 0.2, load: { kind: 'power', powerW: 50 } }) // 4.504902
 * @source Ohm's and Kirchhoff's laws; largest power where the load takes half the voltage
 */
export function loadCurrentA(i: { readonly supplyV: number; readonly seriesOhm: number; readonly load: Load }): number {
  const V = requirePositive('supplyV', i.supplyV)
  const series = requireNotNegative('seriesOhm', i.seriesOhm)
  const load = i.load
  const kind = requireChoice('load.kind', load?.kind, kinds)
  // Unused fields of the load must still be valid.
  const given = load as { readonly currentA?: number; readonly resistanceOhm?: number; readonly powerW?: number }
  if (given.currentA !== undefined) requireNotNegative('load.currentA', given.currentA)
  if (given.resistanceOhm !== undefined) requireNotNegative('load.resistanceOhm', given.resistanceOhm)
  if (given.powerW !== undefined) requireNotNegative('load.powerW', given.powerW)
  if (load.kind === 'current') return constantCurrent(V, series, requireNotNegative('load.currentA', load.currentA))
  if (load.kind === 'power') return constantPower(V, series, requireNotNegative('load.powerW', load.powerW))
  const loop = series + requireNotNegative('load.resistanceOhm', load.resistanceOhm)
  if (loop === 0) throw new DomainError('load.resistanceOhm', load.resistanceOhm, `above 0 where seriesOhm is 0: nothing else limits a load of kind "${kind}"`)
  return requireFiniteResult('load.resistanceOhm', load.resistanceOhm, V / loop)
}

function constantCurrent(V: number, series: number, currentA: number): number {
  if (currentA * series > V) throw new DomainError('load.currentA', currentA, `at most ${told(V / series)} A, at which seriesOhm drops the whole supplyV`)
  return currentA
}

function constantPower(V: number, series: number, powerW: number): number {
  const largestW = (V * V) / (4 * series)
  if (powerW > largestW) throw new DomainError('load.powerW', powerW, `at most ${told(largestW)} W, the largest power that supplyV delivers through seriesOhm`)
  // The fraction of the largest power exceeds 1 by rounding only.
  const share = Math.min(1, (4 * series * powerW) / (V * V))
  return requireFiniteResult('load.powerW', powerW, (2 * powerW) / (V * (1 + Math.sqrt(1 - share))))
}

function told(value: number): string {
  return String(Number(value.toPrecision(toldDigits)))
}
