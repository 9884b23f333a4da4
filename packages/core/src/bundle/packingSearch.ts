import { placeInCorners } from './packingCorners.ts'
import { type DescentRoom, descentRoom, settle } from './packingDescent.ts'
import { makeFeasible, type PackingProblem, packingProblem, updateForces } from './packingEnergy.ts'
import { dropAnywhere, ringPlans, scattered, startFromPair, startInRings, startScattered } from './packingStarts.ts'

/** Search effort by number of wires: starts are settled roughly, the best few exactly. */
interface Effort {
  readonly scatteredStarts: number
  readonly hops: number
  readonly firstSteps: number
  readonly roughSteps: number
  readonly exactOnes: number
}

const roughStiffness = 10
const exactStiffness = 20
const exactSteps = 60
const mostRounds = 25
const fewRounds = 5
/** Overlaps below this fraction of the largest radius are rounding. */
const settled = 1e-9
const rankedAlike = 1e-6
/** A start within this factor of the best after its first steps is settled further. */
const hopeful = 1.05
const roughSlope = 1e-3

/** Up to 24 wires get a long search, longest if unequal; beyond, time is bounded and corner placement does most of the work. */
function effortFor(count: number, equal: boolean): Effort {
  const hops = Math.round((equal ? 240 : 2400) / count)
  if (count <= 24) return { scatteredStarts: Math.round((equal ? 300 : 600) / count), hops, firstSteps: 30, roughSteps: 50, exactOnes: count <= 8 ? 6 : 2 }
  if (count <= 60) return { scatteredStarts: 2, hops: equal ? 2 : 8, firstSteps: 30, roughSteps: 50, exactOnes: 2 }
  return { scatteredStarts: 0, hops: 0, firstSteps: 20, roughSteps: 40, exactOnes: 1 }
}

interface Candidate {
  readonly rank: number
  readonly place: Float64Array
}

function exchange(problem: PackingProblem, one: number, other: number): void {
  const { count, place } = problem
  for (const offset of [0, count]) {
    const kept = place[offset + one] ?? 0
    place[offset + one] = place[offset + other] ?? 0
    place[offset + other] = kept
  }
}

/** Swapped wires are one to three ranks apart in thickness. */
const nearInThickness = 3

/** Perturbs a good arrangement: swaps two unequal wires or moves one elsewhere. */
function hop(problem: PackingProblem, equal: boolean, turn: number, state: number): number {
  const { count, radii } = problem
  const first = scattered(state)
  const one = Math.floor(first.share * count)
  if (equal || turn % 3 === 0) return dropAnywhere(problem, one, problem.place[2 * count] ?? 0, first.state)
  const second = scattered(first.state)
  let other = (one + 1 + Math.floor(second.share * nearInThickness)) % count
  for (let tries = 0; tries < count && radii[other] === radii[one]; tries++) other = (other + 1) % count
  exchange(problem, one, other)
  return second.state
}

/** Settles a candidate until nothing overlaps; returns the radius that encloses all wires. */
function settleExactly(problem: PackingProblem, room: DescentRoom, candidate: Candidate, rounds: number): number {
  problem.pairForces.fill(0)
  problem.edgeForces.fill(0)
  problem.place.set(candidate.place)
  updateForces(problem, roughStiffness)
  for (let round = 0; round < rounds; round++) {
    settle(problem, room, exactStiffness, exactSteps, settled)
    if (updateForces(problem, exactStiffness) < settled) break
  }
  return makeFeasible(problem)
}

/** A near-optimal packing of these radii, in descending order with the first 1: positions and bundle radius, centred on the bundle. */
export function searchPacking(radii: Float64Array): Float64Array {
  const count = radii.length
  const equal = radii[0] === radii[count - 1]
  const effort = effortFor(count, equal)
  const problem = packingProblem(radii)
  const room = descentRoom(count)
  const order = Array.from(radii.keys())
  let state = 1

  let best = Number.POSITIVE_INFINITY
  let bestPlace = problem.place
  const keep = (bundle: number): void => {
    if (bundle >= best) return
    best = bundle
    bestPlace = problem.place.slice()
  }

  const candidates: Candidate[] = []
  let lowest = Number.POSITIVE_INFINITY
  const consider = (): void => {
    let rank = settle(problem, room, roughStiffness, effort.firstSteps, roughSlope)
    if (rank < lowest * hopeful) rank = settle(problem, room, roughStiffness, effort.roughSteps, roughSlope)
    lowest = Math.min(lowest, rank)
    candidates.push({ rank, place: problem.place.slice() })
  }
  const byRank = (one: Candidate, other: Candidate): number => one.rank - other.rank

  placeInCorners(problem, order, 0)
  keep(makeFeasible(problem))
  consider()
  if (!equal) {
    startFromPair(problem, order)
    keep(makeFeasible(problem))
    consider()
  }
  for (const plan of ringPlans(count)) {
    for (const sequence of equal ? [order] : [order, [...order].reverse()]) {
      state = startInRings(problem, plan, sequence, state)
      consider()
    }
  }
  for (let start = 0; start < effort.scatteredStarts; start++) {
    state = startScattered(problem, state)
    consider()
  }
  for (let turn = 0; turn < effort.hops; turn++) {
    candidates.sort(byRank)
    const from = candidates[turn % 2]
    if (from === undefined) break
    problem.place.set(from.place)
    state = hop(problem, equal, turn, state)
    consider()
  }

  candidates.sort(byRank)
  let lastRank = Number.NEGATIVE_INFINITY
  let done = 0
  let winner: Candidate | undefined
  for (const candidate of candidates) {
    if (done === effort.exactOnes) break
    if (candidate.rank - lastRank < rankedAlike) continue
    lastRank = candidate.rank
    done++
    const bundle = settleExactly(problem, room, candidate, fewRounds)
    if (winner === undefined || bundle < best) winner = candidate
    keep(bundle)
  }
  if (winner !== undefined) keep(settleExactly(problem, room, winner, mostRounds))
  return bestPlace
}
