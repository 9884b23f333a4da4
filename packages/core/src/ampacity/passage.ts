import { type Motion, rateKPerS } from './motion.ts'

/** A temperature nearer to its end than this share of the way is there only in the limit. */
const onlyTends = 1e-9
/** Gauss and Legendre, five points on 0 to 1: exact to the ninth power. */
const root = [5 - 2 * Math.sqrt(10 / 7), 5 + 2 * Math.sqrt(10 / 7)].map((x) => Math.sqrt(x) / 6) as unknown as readonly [number, number]
const points = [0.5, 0.5 - root[0], 0.5 + root[0], 0.5 - root[1], 0.5 + root[1]] as const
const outer = 13 * Math.sqrt(70)
const weights = [64 / 225, (322 + outer) / 1800, (322 + outer) / 1800, (322 - outer) / 1800, (322 - outer) / 1800] as const
/** Step in s, where the way left shrinks as exp(-s); shorter about the temperature of the air, where the film sets in. */
const panel = 0.5
const shortestPanel = 0.02
/** A way left that is shorter, in K, is rounding: the pace of this one stands for it. */
const leastWayK = 1e-6
/** Where a step in s is found: to a share of itself, or to a temperature in K after a few rounds. */
const roundsAllowed = 100
const stepAllowed = 1e-12
const leftAllowedK = 1e-8

/** Seconds in which the way left shrinks by 1/e, at this temperature: smooth where the rate itself goes to 0. */
function paceS(m: Motion, wayK: number): number {
  const way = Math.abs(wayK) < leastWayK ? Math.sign(wayK) * leastWayK : wayK
  return -way / rateKPerS(m, m.targetC + way)
}

/** Where on its way, in s, the conductor stands at the temperature of the air; -Infinity where it never does. */
function airAtS(m: Motion, wayK: number): number {
  const ratio = wayK / (m.b.ambientC - m.targetC)
  return ratio > 0 ? Math.log(ratio) : -Infinity
}

/** Step from s that ends on the air's temperature or keeps clear of it. */
function stepFrom(s: number, airS: number): number {
  const past = s - airS
  if (past >= 0) return Math.min(panel, Math.max(shortestPanel, 2 * past))
  return -past < 2 * shortestPanel ? -past : Math.min(panel, -0.7 * past)
}

/** Seconds from s to s + step of a way that begins with wayK. */
function panelS(m: Motion, wayK: number, s: number, step: number): number {
  let sum = 0
  for (let n = 0; n < 5; n += 1) sum += (weights[n] as number) * paceS(m, wayK * Math.exp(-(s + step * (points[n] as number))))
  return sum * step
}

/** Rate per kelvin of a linear wire: -(1/R - I^2 R20 alpha)/C'. */
function linearPerS(m: Motion): number {
  const { b } = m
  return (m.heat20WPerM * b.coefficientPerK - 1 / (b.insideMKPerW + (b.filmMKPerW ?? 0))) / m.capacityJPerMK
}

/** Change of the temperature in timeS, free of cancellation; Infinity where it passes the melting point. */
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

/**
 * The step in s that takes wantedS, of one of size `most` that takes more; near the end of the way only as far as kelvins tell.
 * Newton in a bracket: where the film jumps within the panel, halving still closes in on it.
 */
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

/** Seconds until wantedC; null where it only tends there or moves away. */
export function timeTo(m: Motion, initialC: number, wantedC: number): number | null {
  if (wantedC === initialC) return 0
  const { b } = m
  if (b.filmMKPerW !== null) {
    const perS = linearPerS(m)
    const linear = (wantedC - initialC) / rateKPerS(m, initialC)
    if (!(linear > 0) || !(1 + perS * linear > onlyTends)) return null
    return perS === 0 ? linear : Math.log1p(perS * linear) / perS
  }
  const way = initialC - m.targetC
  const left = (wantedC - m.targetC) / way
  if (!(left > onlyTends && left < 1)) return null
  const end = -Math.log(left)
  const airS = airAtS(m, way)
  let elapsed = 0
  for (let s = 0; s < end; ) {
    const step = Math.min(end - s, stepFrom(s, airS))
    elapsed += panelS(m, way, s, step)
    s = end - s > step ? s + step : end
  }
  return elapsed
}
