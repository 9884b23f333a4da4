import { type Motion, rateKPerS } from './motion.ts'

/** A target closer to the steady temperature than this fraction of the way is reached only asymptotically. */
const onlyTends = 1e-9
/** Gauss-Legendre quadrature, five points on 0 to 1: exact to the ninth power. */
const root = [5 - 2 * Math.sqrt(10 / 7), 5 + 2 * Math.sqrt(10 / 7)].map((x) => Math.sqrt(x) / 6) as unknown as readonly [number, number]
const points = [0.5, 0.5 - root[0], 0.5 + root[0], 0.5 - root[1], 0.5 + root[1]] as const
const outer = 13 * Math.sqrt(70)
const weights = [64 / 225, (322 + outer) / 1800, (322 + outer) / 1800, (322 - outer) / 1800, (322 - outer) / 1800] as const
/** Step in s, where the remaining way to the steady temperature is proportional to exp(-s). Steps are shorter near the air temperature, where the film coefficient changes fastest. */
const panel = 0.5
const shortestPanel = 0.02
/** A remaining way below this, in K, is rounding: the local time constant is taken here instead. */
const leastWayK = 1e-6
/** Convergence of a step in s: relative, or in K after a few rounds. */
const roundsAllowed = 100
const stepAllowed = 1e-12
const leftAllowedK = 1e-8

/** Local time constant in seconds at this temperature; smooth where the rate goes to 0. */
function paceS(m: Motion, wayK: number): number {
  const way = Math.abs(wayK) < leastWayK ? Math.sign(wayK) * leastWayK : wayK
  return -way / rateKPerS(m, m.targetC + way)
}

/** The s at which the conductor passes the air temperature; -Infinity if never. */
function airAtS(m: Motion, wayK: number): number {
  const ratio = wayK / (m.b.ambientC - m.targetC)
  return ratio > 0 ? Math.log(ratio) : -Infinity
}

/** Step from s that ends on the air temperature or stays clear of it. */
function stepFrom(s: number, airS: number): number {
  const past = s - airS
  if (past >= 0) return Math.min(panel, Math.max(shortestPanel, 2 * past))
  return -past < 2 * shortestPanel ? -past : Math.min(panel, -0.7 * past)
}

/** Seconds from s to s + step, starting wayK from the steady temperature. */
function panelS(m: Motion, wayK: number, s: number, step: number): number {
  let sum = 0
  for (let n = 0; n < 5; n += 1) sum += (weights[n] as number) * paceS(m, wayK * Math.exp(-(s + step * (points[n] as number))))
  return sum * step
}

/** Rate constant of a linear wire: -(1/R - I^2 R20 alpha)/C'. */
function linearPerS(m: Motion): number {
  const { b } = m
  return (m.heat20WPerM * b.coefficientPerK - 1 / (b.insideMKPerW + (b.filmMKPerW ?? 0))) / m.capacityJPerMK
}

/** Temperature change in timeS, free of cancellation; Infinity past the melting point. */
export function changeAfterK(m: Motion, initialC: number, timeS: number): number {
  const { b } = m
  const room = b.meltingC - initialC
  if (b.filmMKPerW !== null) {
    const rate = rateKPerS(m, initialC)
    const perS = linearPerS(m)
    const change = rate === 0 ? 0 : rate * (perS === 0 ? timeS : Math.expm1(perS * timeS) / perS)
    return change <= room ? change : Infinity
  }
  const way = initialC - m.targetC
  const airS = airAtS(m, way)
  let elapsed = 0
  let s = 0
  while (Math.abs(way) * Math.exp(-s) > leastWayK) {
    const step = stepFrom(s, airS)
    const whole = panelS(m, way, s, step)
    if (!(elapsed + whole < timeS)) {
      const change = way * Math.expm1(-(s + stepWithin(m, way, s, step, timeS - elapsed, whole)))
      return change <= room ? change : Infinity
    }
    elapsed += whole
    s += step
    if (way * Math.expm1(-s) > room) return Infinity
  }
  return way === 0 ? 0 : way * Math.expm1(-s - (timeS - elapsed) / paceS(m, way * Math.exp(-s)))
}

/** The step in s that takes wantedS, within a step `most` that takes longer; near the steady temperature only to the tolerance in K. Newton in a bracket: at a jump of the film, bisection still converges. */
function stepWithin(m: Motion, way: number, s: number, most: number, wantedS: number, wholeS: number): number {
  let low = 0
  let high = most
  let step = most * (wantedS / wholeS)
  const leftK = Math.abs(way) * Math.exp(-s)
  for (let n = 0; n < roundsAllowed; n += 1) {
    const short = (wantedS - panelS(m, way, s, step)) / paceS(m, way * Math.exp(-(s + step)))
    if (Math.abs(short) <= stepAllowed * step || (n > 2 && Math.abs(short) * leftK <= leftAllowedK)) return Math.min(most, Math.max(0, step + short))
    if (short > 0) low = step
    else high = step
    step = step + short > low && step + short < high && n % 4 !== 3 ? step + short : 0.5 * (low + high)
  }
  return step
}

/** Seconds to wantedC at the rate of the start. */
const linearS = (m: Motion, initialC: number, wantedC: number): number => (wantedC - initialC) / rateKPerS(m, initialC)
/** Share of the way to the steady temperature that is left at wantedC. */
const leftShare = (m: Motion, initialC: number, wantedC: number): number => (wantedC - m.targetC) / (initialC - m.targetC)

/** False where wantedC is approached only asymptotically or not at all. */
export function reaches(m: Motion, initialC: number, wantedC: number): boolean {
  if (wantedC === initialC) return true
  if (m.b.filmMKPerW !== null) {
    const linear = linearS(m, initialC, wantedC)
    return linear > 0 && 1 + linearPerS(m) * linear > onlyTends
  }
  const left = leftShare(m, initialC, wantedC)
  return left > onlyTends && left < 1
}

/** Seconds to wantedC; null if it is approached only asymptotically or not at all. */
export function timeTo(m: Motion, initialC: number, wantedC: number): number | null {
  if (wantedC === initialC) return 0
  if (!reaches(m, initialC, wantedC)) return null
  if (m.b.filmMKPerW !== null) {
    const perS = linearPerS(m)
    const linear = linearS(m, initialC, wantedC)
    return perS === 0 ? linear : Math.log1p(perS * linear) / perS
  }
  const way = initialC - m.targetC
  const end = -Math.log(leftShare(m, initialC, wantedC))
  const airS = airAtS(m, way)
  let elapsed = 0
  for (let s = 0; s < end; ) {
    const step = Math.min(end - s, stepFrom(s, airS))
    elapsed += panelS(m, way, s, step)
    s = end - s > step ? s + step : end
  }
  return elapsed
}
