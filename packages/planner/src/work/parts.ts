import { terminalName, wireText } from '../decision/inner.ts'
import { clampedKinds, type PlanPart } from '../facts/inner.ts'
import { isSoldered, methodTitles, sleeveName, solderFill, solderWireMm } from '../ways/inner.ts'
import { fuseKindText } from './fuseText.ts'
import { fuseChangeOf, type Mending, type Work } from './worked.ts'

/** Parts to fetch before beginning. */
export function partsFor(work: Work): readonly PlanPart[] {
  const { facts, decided, decision } = work
  const parts: PlanPart[] = []
  if (decided.kind !== 'mend' && decided.kind !== 'replace the run') return parts
  if (decided.code === 'data-pair') return parts
  const add = (name: string, quantity: number, unit = '') => parts.push({ name, quantity, unit })
  if (decided.way !== null) joinParts({ ...work, way: decided.way, to: decided.way.facts }, add)
  if (decision.fuseA !== null && decision.fuseA !== facts.job.circuit.fuseA) add(`${decision.fuseA} A ${fuseKindText(facts)}`, 1)
  else if (decided.code === 'fuse-contact' && decision.fuseA !== null) add(`${decision.fuseA} A ${fuseKindText(facts)}`, 1)
  if (decision.fuseA === null && facts.job.circuit.fuseA !== undefined && fuseChangeOf(work) !== null)
    add(`${fuseKindText(facts)}, chosen by its maker’s curve`, 1)
  return parts
}

type Add = (name: string, quantity: number, unit?: string) => void

function joinParts(work: Mending, add: Add): void {
  const { to, way, decision } = work
  const { method, cut, covering } = way
  const { wire } = decision
  if (wire !== null) {
    const name = wireText(to)
    if (method === 'replace-the-run') add(name, wire.lengthM, 'm')
    else add(`${name} to put in`, Math.ceil(1000 * wire.lengthM), 'mm')
  }
  // Feed and return together have four ends.
  if (method === 'replace-the-run') ends(work, wire !== null && wire.lengthM > Math.max(to.outLengthM, to.returnLengthM) ? 4 : 2, add)
  if (method === 'new-crimped-terminal') {
    ends(work, 1, add)
    if (to.job.terminal?.sealInsideMm !== undefined) add('wire seal of the plug, for this wire', 1)
    if (cut.splices > 0) add('crimped and sealed butt splice', cut.splices)
  }
  if (to.job.circuit.kind === 'thermocouple') add('splices of the thermocouple’s own alloys, one for each leg', 2)
  else if (method === 'crimped-butt-splice' || method === 'crimped-and-sealed-butt-splice')
    add(`${metalled(work, methodTitles[method])}, one for the sample`, cut.splices + 1)
  if (method === 'solder-sleeve') add('solder sleeve', cut.splices)
  else if (covering.sleeve !== null) add(sleeveName(covering.sleeve), Math.max(1, cut.splices) * Math.ceil(covering.cutMm), 'mm')
  else if (covering.needed !== null) add(covering.needed.words, Math.max(1, cut.splices) * Math.ceil(covering.cutMm), 'mm')
  if (isSoldered(method) && method !== 'solder-sleeve') {
    const fill = solderFill(method, to)
    add(`${fill.alloy} solder wire of ${solderWireMm} mm, rosin-cored`, cut.splices * fill.wireMm, 'mm')
  }
  if (to.material === 'aluminium-1350') add('brush and joint paste for aluminium', 1)
}

/** Terminals, with one extra for the crimp sample. */
function ends(work: Mending, count: number, add: Add): void {
  const { to } = work
  const clamped = clampedKinds.includes(to.terminal.kind)
  if (to.terminal.kind === 'spring-clamp') return
  if (clamped) add(`ferrule for ${to.sizeText}`, count)
  else add(`${metalled(work, `${terminalName(to)} for ${to.sizeText}`)}, one for the sample`, count + 1)
}

const metalled = ({ to }: Mending, name: string): string => (to.material === 'aluminium-1350' ? `${name}, made for aluminium` : name)
