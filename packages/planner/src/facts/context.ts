import type { MethodContext } from '@strandwise/core'
import type { JobFacts } from './jobFacts.ts'

/** The job's facts as the context of core's method rules. */
export function methodContext(facts: JobFacts): MethodContext {
  const { job } = facts
  const tools: MethodContext['tools'][number][] = []
  // Without a list of tools every tool counts as at hand: it can be borrowed, and the plan lists it.
  for (const kind of ['iron', 'hot-air'] as const) if (job.tools === undefined || job.tools.some((tool) => tool.kind === kind)) tools.push(kind)
  if (job.hasCrimpTool !== false) tools.push('crimp-tool')
  if (job.hasTerminalDie ?? job.hasCrimpTool !== false) tools.push('terminal-die')
  return {
    circuit: job.circuit.kind,
    location: facts.location,
    vibration: facts.vibration,
    flexes: facts.flexes,
    hottestC: facts.hottestC,
    coldestC: facts.coldestC,
    currentA: facts.currentA,
    areaMm2: facts.areaMm2,
    metals: [facts.material, facts.beyond?.material ?? job.terminal?.metal ?? facts.material],
    insulation: facts.insulationName,
    distanceToTerminationMm: job.damage.fromTerminationMm,
    flammableVapour: facts.flammableVapour,
    tools,
    ...(job.circuit.rules === undefined ? {} : { rules: job.circuit.rules }),
  }
}
