import type { PlanBeforeRules } from '@strandwise/planner'
import type { Markup } from '../../lib/markup.ts'
import { decisionCard } from './card.ts'
import { diagnosis } from './diagnosis.ts'
import { type Drawn, figures } from './drawings.ts'
import { everything } from './everything.ts'
import { cautions, parts, steps } from './work.ts'

/** A part of the plan, replaced only if changed. */
export interface PlanBlock {
  readonly key: string
  readonly markup: string
}

const block = (key: string, markup: Markup | null): PlanBlock => ({ key, markup: markup?.text ?? '' })

/** The plan in order: card, cautions, drawings of the chosen way, steps, parts, readings, proof, and everything else on request. */
export function planBlocks(plan: PlanBeforeRules, drawn: readonly Drawn[]): readonly PlanBlock[] {
  const works = plan.decision.kind !== 'refused'
  return [
    block('card', decisionCard(plan)),
    block('cautions', cautions(plan)),
    block('drawings', figures(drawn)),
    block('steps', steps(plan)),
    block('parts', parts(plan)),
    block('diagnosis', works ? diagnosis(plan) : null),
    block('everything', works ? everything(plan) : null),
  ]
}
