import type { HeatModel, HeatState } from '../heatModel.ts'
import { assemble, factor, heatedWire, lossW, sweepIn, sweepOut, unknownsOf } from './heatedWire.ts'
import { exchange, type HeatCurve, heatCurve, riseOf, slopeOf, X } from './lumps.ts'
import { type WireMesh, wireMesh } from './wireMesh.ts'

// Singly diagonally implicit Runge-Kutta method of five stages and order 4, L-stable, its last stage the step's end: Hairer and Wanner, Solving Ordinary
// Differential Equations II, table IV.6.5. Written without slopes: a stage's slope is (Y - z)/(gamma h), so each z is a fixed linear combination of earlier states.

export const stages = 5
/** Diagonal coefficient: each stage is an implicit step of this fraction. */
const gamma = 1 / 4
/** Coefficients of z for stages 1 to 5 (start and earlier stages), then of the error estimate. */
const mixtures = [
  [1],
  [-1, 2],
  [-13 / 25, 42 / 25, -4 / 25],
  [-4 / 17, 89 / 68, -25 / 136, 15 / 136],
  [7 / 3, -37 / 12, -103 / 24, 275 / 8, -85 / 3],
  [-10 / 3, 23 / 6, 17 / 12, -125 / 4, 85 / 3, 1],
].map((row) => Float64Array.from(row))
/** Weights of the stages' slopes over the step. */
const weights = Float64Array.of(25 / 24, -49 / 48, 125 / 16, -85 / 12, 1 / 4)

/** Index, among the states, of the last stage's z. */
const lastZ = stages + 1

/** Writes z of a stage into that stage's own state. */
function mix({ states }: HeatedJoint, stage: number): void {
  const into = states[stage] as Float64Array
  into.fill(0)
  for (let s = 0; s < stage; s++) {
    const c = (mixtures[stage - 1] as Float64Array)[s] as number
    const y = states[s] as Float64Array
    for (let i = 0; i < into.length; i++) into[i] = (into[i] as number) + c * (y[i] as number)
  }
}

/** The error of one entry of the state over the step. */
function errorOf({ states }: HeatedJoint, i: number): number {
  let sum = 0
  for (let s = 0; s <= stages; s++) sum += ((mixtures[stages] as Float64Array)[s] as number) * ((states[s] as Float64Array)[i] as number)
  return Math.abs(sum)
}

const mostTrials = 30
/** Newton's method has converged when a lump moves by less than this fraction of the step's tolerance. */
const settledShare = 1e-3

/** Heat capacity in J/K of a tip that stores heat, while it is on, or of a tube over the joint; else 0. */
const bodyOf = ({ source }: HeatModel, { toolOn }: HeatState): number =>
  source.kind === 'tube' || (source.kind === 'heavy-iron' && toolOn) ? source.capacityJPerK : 0

/** Shortest time scale of the run: from start to solidus at full power, losing heat only to the first millimetres of wire. */
export function shortestTimeS(model: HeatModel): number {
  const { source } = model
  const out = new Float64Array(8)
  exchange(model, { toolOn: true, recovered: true }, 0, source.kind === 'heavy-iron' ? source.setRiseK : source.kind === 'tube' ? source.airRiseK : 0, out)
  const power = Math.max(out[X.joint] as number, Number.MIN_VALUE)
  const rise = model.melt.solidusRiseK
  let effusance = 0
  for (const wire of model.wires) effusance += wire.tails * Math.sqrt(wire.conductanceWM * wire.bareStoreJPerMK)
  const reachedS = (model.capacityJPerK * rise) / power + (Math.PI / 4) * ((effusance * rise) / power) ** 2
  return Math.max(Math.min(reachedS, model.toolOffS / 10), 1e-12 * model.observeS)
}

/** The joint, its heat source and wires, and their states: at the start of a step, at its five stages, and z of the last. */
export type HeatedJoint = ReturnType<typeof heatedJoint>

/** A state is one list: heat of the joint, heat of tip or tube, then each wire's nodes and the tube's places over it. */
export function heatedJoint(model: HeatModel, shortestS: number) {
  const state: HeatState = { toolOn: true, recovered: false }
  const bodyJPerK = bodyOf(model, state)
  const curve: HeatCurve = heatCurve(model.capacityJPerK, model.melt)
  const meshes = model.wires.map((wire) => wireMesh(wire, model.accuracy, shortestS, model.observeS))
  const from = meshes.map((_, w) => meshes.slice(0, w).reduce((sum, mesh) => sum + unknownsOf(mesh), 2))
  const length = meshes.reduce((sum, mesh) => sum + unknownsOf(mesh), 2)
  const states = Array.from({ length: stages + 2 }, () => new Float64Array(length))
  const joint = {
    model,
    curve,
    bodyJPerK,
    state,
    states,
    /** Index in the state of each wire's first node. */
    from,
    wires: model.wires.map((wire, w) => heatedWire(wire, meshes[w] as WireMesh, state, states, from[w] as number)),
    flows: new Float64Array(8),
    /** Heat from the tool, and to the surroundings, over the solved step. */
    heatInJ: 0,
    lossJ: 0,
  }
  // A tip with heat capacity starts hot.
  if (model.source.kind === 'heavy-iron') (states[0] as Float64Array)[1] = bodyJPerK * model.source.setRiseK
  return joint
}

/** Changes the state from outside, and with it the wires' losses; a tip's stored heat leaves with the tip. */
export function changeState(joint: HeatedJoint, state: HeatState): void {
  joint.state = state
  joint.bodyJPerK = bodyOf(joint.model, state)
  for (const wire of joint.wires) assemble(wire, state)
  if (joint.bodyJPerK === 0) (joint.states[0] as Float64Array)[1] = 0
}

/** Temperature rise of the tip or tube. */
export const bodyRiseOf = (joint: HeatedJoint, heatJ: number): number => (joint.bodyJPerK === 0 ? 0 : heatJ / joint.bodyJPerK)

/** Solves for the heat of joint and tip or tube at a stage by Newton's method; false if it does not converge. */
function solveLumps(joint: HeatedJoint, stage: number, nuS: number, toleranceK: number, taken: number, given: number): boolean {
  const { model, state, curve, bodyJPerK, flows } = joint
  const at = joint.states[stage] as Float64Array
  const zJ = at[0] as number
  const zB = at[1] as number
  const before = joint.states[stage - 1] as Float64Array
  let heat = before[0] as number
  let bodyHeat = before[1] as number
  for (let trial = 0; trial < mostTrials; trial++) {
    const rise = riseOf(curve, heat)
    const slope = slopeOf(curve, heat)
    exchange(model, state, rise, bodyRiseOf(joint, bodyHeat), flows)
    const off = heat - zJ - nuS * (flows[X.joint] as number) + taken * rise - given
    const a = 1 + (taken - nuS * (flows[X.jointByJoint] as number)) * slope
    let change = off / a
    let bodyChange = 0
    if (bodyJPerK > 0) {
      const offB = bodyHeat - zB - nuS * (flows[X.body] as number)
      const b = (-nuS * (flows[X.jointByBody] as number)) / bodyJPerK
      const c = -nuS * (flows[X.bodyByJoint] as number) * slope
      const d = 1 - (nuS * (flows[X.bodyByBody] as number)) / bodyJPerK
      const determinant = a * d - b * c
      change = (off * d - b * offB) / determinant
      bodyChange = (a * offB - c * off) / determinant
    }
    heat -= change
    bodyHeat -= bodyChange
    if (Math.abs(change) <= settledShare * toleranceK * curve.capacityJPerK && Math.abs(bodyChange) <= settledShare * toleranceK * bodyJPerK) {
      at[0] = heat
      at[1] = bodyHeat
      return true
    }
  }
  return false
}

/** Solves one implicit stage; false if the lumps do not converge. */
function solveStage(joint: HeatedJoint, stage: number, nuS: number, toleranceK: number): boolean {
  let taken = 0
  let given = 0
  for (const wire of joint.wires) {
    factor(wire, nuS)
    given += wire.wire.tails * sweepIn(wire, stage)
    taken += wire.wire.tails * wire.taken
  }
  if (!solveLumps(joint, stage, nuS, toleranceK, taken, given)) return false
  const rise = riseOf(joint.curve, (joint.states[stage] as Float64Array)[0] as number)
  for (const wire of joint.wires) sweepOut(wire, stage, rise)
  return true
}

/** Adds a stage's heat input and loss, with its quadrature weight. */
function book(joint: HeatedJoint, stage: number, weightS: number): void {
  const { model, state, curve, flows } = joint
  const at = joint.states[stage] as Float64Array
  exchange(model, state, riseOf(curve, at[0] as number), bodyRiseOf(joint, at[1] as number), flows)
  joint.heatInJ += weightS * (flows[X.heatIn] as number)
  let lost = flows[X.surface] as number
  for (const wire of joint.wires) lost += wire.wire.tails * lossW(wire, stage)
  joint.lossJ += weightS * lost
}

/** Solves a step of this length; false if a stage does not converge. */
export function solveStep(joint: HeatedJoint, durationS: number, toleranceK: number): boolean {
  joint.heatInJ = 0
  joint.lossJ = 0
  for (let stage = 1; stage <= stages; stage++) {
    mix(joint, stage)
    if (stage === stages) (joint.states[lastZ] as Float64Array).set(joint.states[stages] as Float64Array)
    if (!solveStage(joint, stage, gamma * durationS, toleranceK)) return false
    book(joint, stage, durationS * (weights[stage - 1] as number))
  }
  return true
}

/** Solves one very short implicit stage, whose slope is that just after a change from outside; false if it does not converge. */
export function solveStart(joint: HeatedJoint, nuS: number): boolean {
  mix(joint, 1)
  return solveStage(joint, 1, nuS, 1e-6)
}

/** Slope of an entry at the start, after `solveStart`, or at the end of a solved step: that of its stage, per second. */
export const startSlope = ({ states }: HeatedJoint, i: number, nuS: number): number => slopeBetween(states[0], states[1], i, nuS)
export const endSlope = ({ states }: HeatedJoint, i: number, durationS: number): number => slopeBetween(states[lastZ], states[stages], i, gamma * durationS)

function slopeBetween(z: Float64Array | undefined, y: Float64Array | undefined, i: number, nuS: number): number {
  return ((y?.[i] as number) - (z?.[i] as number)) / nuS
}

/** Largest error of the solved step, in K, over lumps and edges. */
export function stepErrorK(joint: HeatedJoint): number {
  let error = errorOf(joint, 0) / joint.curve.capacityJPerK
  if (joint.bodyJPerK > 0) error = Math.max(error, errorOf(joint, 1) / joint.bodyJPerK)
  for (let w = 0; w < joint.wires.length; w++) error = Math.max(error, errorOf(joint, (joint.from[w] as number) + (joint.wires[w]?.mesh.edgeNode ?? 0)))
  return error
}

/** Makes the end of the solved step the start of the next. */
export const acceptStep = ({ states }: HeatedJoint): void => (states[0] as Float64Array).set(states[stages] as Float64Array)
