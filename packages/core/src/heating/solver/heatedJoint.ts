import type { HeatModel, HeatSource } from '../heatModel.ts'
import { assemble, factor, heatedWire, lossW, statesHeld, sweepIn, sweepOut } from './heatedWire.ts'
import { exchange, type HeatCurve, heatCurve, riseOf, slopeOf, X } from './lumps.ts'
import { type WireState, wireMesh } from './wireMesh.ts'

// Singly diagonally implicit Runge-Kutta method of five stages and order 4, L-stable, its last stage the step's end: Hairer and Wanner, Solving Ordinary
// Differential Equations II, table IV.6.5. Written without slopes: a stage's slope is (Y - z)/(gamma h), so each z is a fixed linear combination of earlier states.

export const stages = 5
/** Diagonal coefficient: each stage is an implicit step of this fraction. */
export const gamma = 1 / 4
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

/** Writes z of a stage into that stage's own list. */
function mix(states: readonly Float64Array[], stage: number, length: number): void {
  const into = states[stage] as Float64Array
  for (let s = 0; s < stage; s++) {
    const c = (mixtures[stage - 1] as Float64Array)[s] as number
    const y = states[s] as Float64Array
    if (s === 0) for (let i = 0; i < length; i++) into[i] = c * (y[i] as number)
    else for (let i = 0; i < length; i++) into[i] = (into[i] as number) + c * (y[i] as number)
  }
}

/** The error of one entry over the step. */
function errorOf(states: readonly Float64Array[], i: number): number {
  let sum = 0
  for (let s = 0; s <= stages; s++) sum += ((mixtures[stages] as Float64Array)[s] as number) * ((states[s] as Float64Array)[i] as number)
  return sum
}

const mostTrials = 30
/** Newton's method has converged when a lump moves by less than this fraction of the step's tolerance. */
const settledShare = 1e-3

/** Heat capacity in J/K of a tip that stores heat, or of a tube over the joint; else 0. */
const bodyOf = (source: HeatSource): number => (source.kind === 'heavy-iron' || source.kind === 'tube' ? source.capacityJPerK : 0)

/** Shortest time scale of the run: from start to solidus at full power, losing heat only to the first millimetres of wire. */
export function shortestTimeS(model: HeatModel): number {
  const { source } = model
  const out = new Float64Array(8)
  const full: HeatSource = source.kind === 'tube' ? { ...source, recovered: true } : source
  exchange(model, full, 0, source.kind === 'heavy-iron' ? source.setRiseK : source.kind === 'tube' ? source.airRiseK : 0, out)
  const power = Math.max(out[X.joint] as number, Number.MIN_VALUE)
  const rise = model.melt.solidusRiseK
  let effusance = 0
  for (const wire of model.wires) effusance += wire.tails * Math.sqrt(wire.conductanceWM * wire.bareStoreJPerMK)
  const reachedS = (model.capacityJPerK * rise) / power + (Math.PI / 4) * ((effusance * rise) / power) ** 2
  return Math.max(Math.min(reachedS, model.toolOffS / 10), 1e-12 * model.observeS)
}

/** State of the joint, its heat source and wires, at the start and stages of a step. Lumps hold heat: the joint is lump 0, the tip or tube lump 1. */
export type HeatedJoint = ReturnType<typeof heatedJoint>

export function heatedJoint(model: HeatModel, shortestS: number) {
  const state: WireState = { toolOn: true, recovered: false }
  const bodyJPerK = bodyOf(model.source)
  const curve: HeatCurve = heatCurve(model.capacityJPerK, model.melt)
  const joint = {
    model,
    curve,
    bodyJPerK,
    source: model.source,
    state,
    wires: model.wires.map((wire) => heatedWire(wire, wireMesh(wire, model.accuracy, shortestS, model.observeS), state)),
    lumps: Array.from({ length: statesHeld }, () => new Float64Array(2)),
    /** z of the last stage, needed for the slope at the step's end. */
    lastZ: new Float64Array(2),
    edgeLastZ: new Float64Array(model.wires.length),
    flows: new Float64Array(8),
    /** Heat from the tool, and to the surroundings, over the solved step. */
    heatInJ: 0,
    lossJ: 0,
  }
  // A tip with heat capacity starts hot.
  if (model.source.kind === 'heavy-iron') (joint.lumps[0] as Float64Array)[1] = bodyJPerK * model.source.setRiseK
  return joint
}

/** Switches to another heat source and its effect on the wires; the tip's stored heat leaves with the tip. */
export function changeSource(joint: HeatedJoint, source: HeatSource, state: WireState): void {
  joint.source = source
  joint.state = state
  for (const wire of joint.wires) assemble(wire, state)
  if (bodyOf(source) === 0) (joint.lumps[0] as Float64Array)[1] = 0
}

/** Temperature rise of the tip or tube. */
export const bodyRiseOf = (joint: HeatedJoint, heatJ: number): number => (joint.bodyJPerK === 0 ? 0 : heatJ / joint.bodyJPerK)

/** Solves for the heat of joint and tip or tube at a stage by Newton's method; false if it does not converge. */
function solveLumps(joint: HeatedJoint, stage: number, nuS: number, toleranceK: number, taken: number, given: number): boolean {
  const { model, source, curve, bodyJPerK, flows } = joint
  const at = joint.lumps[stage] as Float64Array
  const zJ = at[0] as number
  const zB = at[1] as number
  const before = joint.lumps[stage - 1] as Float64Array
  let heat = before[0] as number
  let bodyHeat = before[1] as number
  const withBody = bodyOf(source) > 0
  for (let trial = 0; trial < mostTrials; trial++) {
    const rise = riseOf(curve, heat)
    const slope = slopeOf(curve, heat)
    exchange(model, source, rise, bodyRiseOf(joint, bodyHeat), flows)
    const off = heat - zJ - nuS * (flows[X.joint] as number) + taken * rise - given
    const a = 1 + (taken - nuS * (flows[X.jointByJoint] as number)) * slope
    let change = off / a
    let bodyChange = 0
    if (withBody) {
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
  const rise = riseOf(joint.curve, (joint.lumps[stage] as Float64Array)[0] as number)
  for (const wire of joint.wires) sweepOut(wire, stage, rise)
  return true
}

/** Adds a stage's heat input and loss, with its quadrature weight. */
function book(joint: HeatedJoint, stage: number, weightS: number): void {
  const { model, source, curve, flows } = joint
  const at = joint.lumps[stage] as Float64Array
  exchange(model, source, riseOf(curve, at[0] as number), bodyRiseOf(joint, at[1] as number), flows)
  joint.heatInJ += weightS * (flows[X.heatIn] as number)
  let lost = flows[X.surface] as number
  for (const wire of joint.wires) lost += wire.wire.tails * lossW(wire, stage)
  joint.lossJ += weightS * lost
}

/** Solves a step of this length; false if a stage does not converge. */
export function solveStep(joint: HeatedJoint, durationS: number, toleranceK: number): boolean {
  const nuS = gamma * durationS
  joint.heatInJ = 0
  joint.lossJ = 0
  for (let stage = 1; stage <= stages; stage++) {
    mix(joint.lumps, stage, 2)
    for (const wire of joint.wires) {
      mix(wire.u, stage, wire.store.length)
      if (wire.places > 0) mix(wire.tubeU, stage, wire.places)
    }
    if (stage === stages) keepLastZ(joint)
    if (!solveStage(joint, stage, nuS, toleranceK)) return false
    book(joint, stage, durationS * (weights[stage - 1] as number))
  }
  return true
}

function keepLastZ(joint: HeatedJoint): void {
  const z = joint.lumps[stages] as Float64Array
  joint.lastZ.set(z)
  joint.wires.forEach((wire, w) => {
    joint.edgeLastZ[w] = (wire.u[stages] as Float64Array)[wire.mesh.edgeNode] as number
  })
}

/** Largest error of the solved step, in K, over lumps and edges. */
export function stepErrorK(joint: HeatedJoint): number {
  let error = Math.abs(errorOf(joint.lumps, 0)) / joint.curve.capacityJPerK
  if (joint.bodyJPerK > 0) error = Math.max(error, Math.abs(errorOf(joint.lumps, 1)) / joint.bodyJPerK)
  for (const wire of joint.wires) error = Math.max(error, Math.abs(errorOf(wire.u, wire.mesh.edgeNode)))
  return error
}

/** Makes the end of the solved step the start of the next. */
export function acceptStep(joint: HeatedJoint): void {
  ;(joint.lumps[0] as Float64Array).set(joint.lumps[stages] as Float64Array)
  for (const wire of joint.wires) {
    ;(wire.u[0] as Float64Array).set(wire.u[stages] as Float64Array)
    if (wire.places > 0) (wire.tubeU[0] as Float64Array).set(wire.tubeU[stages] as Float64Array)
  }
}

/** Slopes of the lumps' heat and of the edges just after a discontinuity, by one very short implicit stage. */
export function startSlopes(joint: HeatedJoint, nuS: number, heatW: Float64Array, edgeKPerS: Float64Array): boolean {
  mix(joint.lumps, 1, 2)
  for (const wire of joint.wires) {
    mix(wire.u, 1, wire.store.length)
    if (wire.places > 0) mix(wire.tubeU, 1, wire.places)
  }
  if (!solveStage(joint, 1, nuS, 1e-6)) return false
  for (let k = 0; k < 2; k++) heatW[k] = (((joint.lumps[1] as Float64Array)[k] as number) - ((joint.lumps[0] as Float64Array)[k] as number)) / nuS
  joint.wires.forEach((wire, w) => {
    const at = wire.mesh.edgeNode
    edgeKPerS[w] = (((wire.u[1] as Float64Array)[at] as number) - ((wire.u[0] as Float64Array)[at] as number)) / nuS
  })
  return true
}
