import type { DecidedJoint, RepairJob } from '@strandwise/planner'
import { crimpSide } from '../../drawings/crimpSide.ts'
import { cutBackDrawing } from '../../drawings/cutBack.ts'
import { jointSection } from '../../drawings/jointSection.ts'
import { jointSide } from '../../drawings/jointSide.ts'
import { html, type Markup, made } from '../../lib/markup.ts'

export interface Drawn {
  readonly svg: string
  readonly sentence: string
}

export const figure = ({ svg, sentence }: Drawn): Markup => html`<figure class="to-scale">${made(svg)}<figcaption>${sentence}</figcaption></figure>`

function sideOf(joint: DecidedJoint): Drawn {
  const { form, conductorMm, outsideMm, jointMm, barrelMm, stripMm, layers } = joint
  if (form === 'lap' || form === 'wound') return jointSide(joint)
  const outer = layers.at(-1)
  return crimpSide({
    form,
    conductorMm,
    outsideMm,
    barrelLengthMm: jointMm,
    barrelMm,
    stripMm,
    sleeve: outer === undefined ? null : { cutMm: outer.cutMm, outsideMm: outer.outsideMm },
  })
}

/** The chosen way to scale: the cuts, the joint from the side, and its cross-section in the housing's hole. */
export function decidedDrawings(joint: DecidedJoint | null, damage: RepairJob['damage']): readonly Drawn[] {
  if (joint === null) return []
  const { cutBackMm, cutEnds, insertMm, jointMm, outsideMm, form } = joint
  const cuts = cutBackDrawing({
    fromTerminationMm: damage.fromTerminationMm,
    cutBackMm,
    cutEnds,
    insertMm,
    jointMm,
    outsideMm,
    newTerminal: form === 'terminal',
  })
  return [cuts, sideOf(joint), ...(joint.layers.length > 0 || joint.housingHoleMm !== null ? [jointSection(joint)] : [])]
}

export const figures = (drawn: readonly Drawn[]): Markup | null =>
  drawn.length === 0 ? null : html`<section aria-labelledby="plan-drawings"><h2 id="plan-drawings">To scale</h2>${drawn.map(figure)}</section>`
