import { packBundle, recoveredWallMm, type Sleeve } from '@strandwise/core'
import type { JobFacts } from '../facts/inner.ts'
import type { WorkedOut } from '../report/inner.ts'
import { isSoldered, type JudgedWay, jointShape, sleeveName } from '../ways/inner.ts'

/** One layer of sleeve, supplied and shrunk. */
export interface LayerPicture {
  readonly name: string
  readonly suppliedInsideMm: number
  readonly suppliedOutsideMm: number
  readonly insideMm: number
  readonly outsideMm: number
  readonly cutMm: number
}

/** A joint as numbers, for a drawing to scale; lengths along the wire from the joint's middle. */
export interface JointPicture {
  readonly kind: 'lap' | 'barrel'
  readonly conductorMm: number
  readonly outsideMm: number
  /** Overlap of a lap or length of a barrel. */
  readonly jointMm: number
  readonly stubMm: number
  readonly barrelMm: number
  readonly layers: readonly LayerPicture[]
  readonly strandMm: number
  /** Strand positions of one wire about its middle. */
  readonly strands: readonly { readonly xMm: number; readonly yMm: number }[]
  readonly housingHoleMm: number | null
}

/** The chosen joint, with cut-back, strip and inserted lengths. */
export interface DecidedJoint extends JointPicture {
  /** Wires side by side, wires wrapped, a barrel over both ends, or an end with its terminal. */
  readonly form: 'lap' | 'wound' | 'barrel' | 'terminal'
  readonly stripMm: number
  /** Length cut from each end, and inserted length. */
  readonly cutBackMm: number
  readonly cutEnds: 1 | 2
  readonly insertMm: number
  readonly splices: number
}

/** Strands drawn if the job does not give a count: a common bunch. */
const usualStrands = 19
/** Most strands drawn: a page's scale shows no more. */
const mostDrawnStrands = 37

function layerOf(sleeve: Sleeve, ontoMm: number, cutMm: number): LayerPicture {
  const { recoveredWallMm: wall, recoveredInsideMm, suppliedInsideMm } = sleeve
  const wallOn = (onto: number) => recoveredWallMm({ recoveredWallMm: wall, recoveredInsideMm, ontoMm: onto })
  const insideMm = Math.max(ontoMm, recoveredInsideMm)
  return {
    name: sleeveName(sleeve),
    suppliedInsideMm,
    suppliedOutsideMm: suppliedInsideMm + 2 * wallOn(suppliedInsideMm),
    insideMm,
    outsideMm: insideMm + 2 * wallOn(insideMm),
    cutMm,
  }
}

function strandsOf(facts: JobFacts): Pick<JointPicture, 'strandMm' | 'strands'> {
  const count = Math.min(mostDrawnStrands, facts.strandCount ?? usualStrands)
  const packed = packBundle(Array.from({ length: count }, () => 1))
  const scale = facts.conductorDiameterMm / packed.diameterMm
  return { strandMm: scale, strands: packed.centresMm.map((centre) => ({ xMm: centre.xMm * scale, yMm: centre.yMm * scale })) }
}

const forms: Readonly<Record<JudgedWay['method'], DecidedJoint['form']>> = {
  'soldered-lap': 'lap',
  'solder-sleeve': 'lap',
  'soldered-lineman-splice': 'wound',
  'crimped-butt-splice': 'barrel',
  'crimped-and-sealed-butt-splice': 'barrel',
  'new-crimped-terminal': 'terminal',
  'replace-the-run': 'terminal',
}

/** The joint of the chosen way; null if nothing is joined. */
export function decidedJoint({ deciding }: WorkedOut): DecidedJoint | null {
  const { way } = deciding.decided
  if (way === null) return null
  const { facts, cut, covering, method } = way
  const shape = jointShape(method, facts, way.heat?.index ?? 0)
  const soldered = isSoldered(method)
  return {
    kind: soldered ? 'lap' : 'barrel',
    form: forms[method],
    conductorMm: facts.conductorDiameterMm,
    outsideMm: facts.outsideMm,
    jointMm: soldered ? shape.overlapMm : shape.lengthMm,
    stubMm: soldered ? shape.stubMm : 0.5,
    barrelMm: soldered ? facts.outsideMm : shape.widthMm,
    stripMm: shape.stripMm,
    cutBackMm: cut.eachMm,
    cutEnds: cut.ends,
    insertMm: cut.insertMm,
    splices: cut.splices,
    layers: covering.sleeve === null ? [] : [layerOf(covering.sleeve, Math.max(facts.outsideMm, shape.widthMm), covering.cutMm)],
    ...strandsOf(facts),
    housingHoleMm: facts.job.terminal?.housingHoleMm ?? null,
  }
}
