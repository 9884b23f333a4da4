import { newEdgeStep } from './edgeStep.ts'
import { edgeRiseK } from './heatingEdges.ts'
import type { HeatingState } from './heatingState.ts'
import { heatJ } from './lump.ts'

/** Gives the step the wires as they now are. */
export function linkWires(run: HeatingState): void {
  const { step } = run
  step.modes = run.wires.map((heated) => heated.modes)
  step.jointStoreJPerK = 0
  step.admittanceWPerK = 0
  step.drivenW = 0
  for (const { modes, wire } of run.wires) {
    step.jointStoreJPerK += wire.tails * modes.jointStoreJPerK
    step.admittanceWPerK += wire.tails * modes.admittanceWPerK
    step.drivenW += wire.tails * modes.drivenW
  }
}

/** The edges at this instant, from the modes: rises and slopes. */
export function startEdges(run: HeatingState): void {
  const { step, record } = run
  run.edges = run.wires.map(({ modes, wire }, w) => newEdgeStep(modes, wire.limitRiseK, step.values[w] as Float64Array))
  run.wires.forEach(({ modes }, w) => {
    const y = step.values[w] as Float64Array
    record.edgeNowK[w] = edgeRiseK(modes, y, step.joint.riseK)
    let slope = 0
    for (let k = 0; k < modes.count; k++) {
      const change = (modes.coupling[k] as number) * step.joint.riseK + (modes.drive[k] as number) - (modes.ratesPerS[k] as number) * (y[k] as number)
      slope += (modes.edge[k] as number) * change
    }
    record.edgeSlopeKPerS[w] = slope
  })
}

/** Adds the heat that left the wires since their modes last changed: the exact integral of what the modes lost. */
export function settleLosses(run: HeatingState): void {
  const spanS = run.nowS - run.sinceS
  run.wires.forEach(({ modes, wire }, w) => {
    const y = run.step.values[w] as Float64Array
    const y0 = run.atChange[w] as Float64Array
    let lost = modes.lossOffsetW * spanS + modes.lossJointWPerK * run.riseKS
    for (let k = 0; k < modes.count; k++) {
      const driven = (modes.coupling[k] as number) * run.riseKS + (modes.drive[k] as number) * spanS
      lost += ((modes.loss[k] as number) * (driven - (y[k] as number) + (y0[k] as number))) / (modes.ratesPerS[k] as number)
    }
    run.lossJ += wire.tails * lost
    y0.set(y)
  })
  run.riseKS = 0
  run.sinceS = run.nowS
}

/** Heat in the joint, in a tube over it, and in the wires by their end profiles. */
function storedJ(run: HeatingState): number {
  const { step } = run
  let sum = heatJ(step.joint) + step.jointStoreJPerK * step.joint.riseK + (step.body === null ? 0 : heatJ(step.body))
  run.wires.forEach(({ modes, wire }, w) => {
    const y = step.values[w] as Float64Array
    for (let k = 0; k < modes.count; k++) sum += wire.tails * (modes.store[k] as number) * (y[k] as number)
  })
  return sum
}

/** What the balance misses over the heat that the tool put in; where it put none in, over the largest of what moved. */
export function energyResidual(run: HeatingState): number {
  const stored = storedJ(run)
  const missed = Math.abs(run.heatInJ - run.lossJ - stored)
  const over = run.heatInJ > 0 ? run.heatInJ : Math.max(Math.abs(run.heatInJ), Math.abs(run.lossJ), Math.abs(stored))
  return over > 0 ? missed / over : 0
}
