import type { MethodName } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods, solderWireMm } from '../facts/soldered.ts'
import type { Covering } from './coveringSection.ts'
import { insertedMm } from './cutBack.ts'
import { methodTitles } from './methodTitles.ts'
import type { PlanPart } from './repairPlan.ts'

/** What to fetch before beginning. */
export function partsFor(facts: JobFacts, method: MethodName, covering: Covering): readonly PlanPart[] {
  // What a data pair needs stands in the maker's procedure.
  if (facts.job.circuit.kind === 'data-pair') return []
  const parts: PlanPart[] = []
  const inserted = insertedMm(method, facts)
  const splices = inserted > 0 ? 2 : 1
  const add = (name: string, quantity: number, unit = '') => parts.push({ name, quantity, unit })
  if (method === 'replace-the-run') add(`${facts.sizeText} ${facts.insulationName} wire`, facts.outLengthM, 'm')
  if (inserted > 0) add(`${facts.sizeText} ${facts.insulationName} wire to put in`, Math.ceil(inserted), 'mm')
  if (method === 'new-crimped-terminal') {
    add('terminal of the plug, for this wire', 1)
    if (facts.job.terminal?.sealInsideMm !== undefined) add('wire seal of the plug, for this wire', 1)
    if (inserted > 0) add('crimped and sealed butt splice', 1)
  }
  if (method === 'crimped-butt-splice' || method === 'crimped-and-sealed-butt-splice') add(methodTitles[method], splices)
  if (method === 'solder-sleeve') add('solder sleeve', splices)
  else if (covering.sleeve !== null) add(covering.sleeve.name ?? `${covering.sleeve.material} sleeve`, splices * Math.ceil(covering.cutMm), 'mm')
  else if (covering.needed !== null) add(covering.needed.words, splices * Math.ceil(covering.cutMm), 'mm')
  if (solderedMethods.includes(method) && method !== 'solder-sleeve') {
    const joint = solderedJoint(method, facts)
    add(`${joint.alloy} solder wire of ${solderWireMm} mm, rosin-cored`, splices * joint.solderLengthMm, 'mm')
  }
  return parts
}
