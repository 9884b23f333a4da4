import { placeInCorners } from './packingCorners.ts'
import type { PackingProblem } from './packingEnergy.ts'

/** Initial guess of the bundle's fill factor. */
const guessedFill = 0.78
/** Linear congruential generator: pseudo-random but fixed, so that the same input is always packed the same way. */
const scatter = { multiplier: 1664525, increment: 1013904223, modulus: 4294967296 }

/** The next pseudo-random number from 0 to 1, and the new state. */
export function scattered(state: number): { readonly state: number; readonly share: number } {
  const next = (Math.imul(state, scatter.multiplier) + scatter.increment) >>> 0
  return { state: next, share: next / scatter.modulus }
}

/** Number of equal wires in the outer ring of a bundle of this many. */
function outerRing(count: number): number {
  const inRadii = Math.sqrt(count / guessedFill)
  return inRadii <= 2 ? count : Math.floor(Math.PI / Math.asin(1 / (inRadii - 1)))
}

/** Wires per ring, from the inside: up to five form one ring, six to eight a ring round a centre wire, more form further rings. */
function rings(count: number): readonly number[] {
  if (count <= 0) return []
  if (count <= 5) return [count]
  if (count <= 8) return [1, count - 1]
  const outer = outerRing(count)
  return [...rings(count - outer), outer]
}

/** The ring plans worth trying: the guessed outer ring, one more and one fewer. */
export function ringPlans(count: number): readonly (readonly number[])[] {
  const guess = outerRing(count)
  return [guess, guess - 1, guess + 1].filter((outer) => outer >= 2 && outer <= count).map((outer) => [...rings(count - outer), outer])
}

/** Places the wires in rings, in the given order from the inside; returns the generator's state after the jitter that breaks symmetry. */
export function startInRings(problem: PackingProblem, plan: readonly number[], order: readonly number[], state: number): number {
  const { count, radii, place } = problem
  const jitter = 0.05
  let at = 0
  let reach = 0
  let now = state
  for (const [ring, members] of plan.entries()) {
    let girth = 0
    let thickest = 0
    for (let m = 0; m < members; m++) {
      const radius = radii[order[at + m] ?? 0] ?? 0
      girth += radius
      thickest = Math.max(thickest, radius)
    }
    const ringRadius = ring === 0 && members === 1 ? 0 : Math.max(reach + 0.9 * thickest, girth / Math.PI)
    let angle = ring
    for (let m = 0; m < members; m++) {
      const wire = order[at + m] ?? 0
      const radius = radii[wire] ?? 0
      const turn = (Math.PI * radius) / girth
      const one = scattered(now)
      const two = scattered(one.state)
      now = two.state
      angle += turn
      place[wire] = ringRadius * Math.cos(angle) + jitter * radius * (one.share - 0.5)
      place[count + wire] = ringRadius * Math.sin(angle) + jitter * radius * (two.share - 0.5)
      angle += turn
    }
    reach = ringRadius + thickest
    at += members
  }
  place[2 * count] = reach
  return now
}

/** Places one wire at random inside a bundle of this radius; returns the generator's state. */
export function dropAnywhere(problem: PackingProblem, wire: number, bundle: number, state: number): number {
  const one = scattered(state)
  const two = scattered(one.state)
  const angle = 2 * Math.PI * one.share
  const out = Math.sqrt(two.share) * Math.max(0, bundle - (problem.radii[wire] ?? 0))
  problem.place[wire] = out * Math.cos(angle)
  problem.place[problem.count + wire] = out * Math.sin(angle)
  return two.state
}

/** Places all wires at random in a bundle of the guessed size; returns the generator's state. */
export function startScattered(problem: PackingProblem, state: number): number {
  let filled = 0
  for (const radius of problem.radii) filled += radius * radius
  const bundle = Math.sqrt(filled / guessedFill)
  let now = state
  for (let wire = 0; wire < problem.count; wire++) now = dropAnywhere(problem, wire, bundle, now)
  problem.place[2 * problem.count] = bundle
  return now
}

/** Places the two thickest side by side about the centre and the others in corners round them: a good start where two wires dominate. */
export function startFromPair(problem: PackingProblem, order: readonly number[]): void {
  const { count, radii, place } = problem
  const [one = 0, two = 0] = radii
  place.fill(0)
  place[0] = -two
  place[1] = one
  place[2 * count] = one + two
  placeInCorners(problem, order, 2)
}
