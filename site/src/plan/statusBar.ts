import type { Missing } from './answers.ts'
import { el, part } from './dom.ts'
import { missingWords } from './formWords.ts'
import type { NotedProblem } from './planService.ts'
import type { PlanShown } from './showPlan.ts'

export interface Standing {
  readonly plan: PlanShown | null
  /** The plan shown is of earlier answers. */
  readonly old: boolean
  readonly missing: readonly Missing[]
  readonly problems: readonly NotedProblem[]
  readonly trouble: string | null
}

/** Button to the next field; its target is determined at the tap, once the last field has been read. */
const go = (path: string, words: string) => el('button', { type: 'button', 'data-goto': path, 'data-from-bar': true }, words)

const kindWords: Readonly<Record<PlanShown['kind'], string>> = {
  mend: 'Mend',
  'replace the run': 'Replace the run',
  'leave it': 'Leave it',
  'measure first': 'Measure first',
  refused: 'Refused',
}

/** Status line at the foot of the window: state of the plan, next field, and a button to the plan. */
export class StatusBar {
  readonly #bar: HTMLElement

  constructor(root: HTMLElement) {
    this.#bar = part(root, '[data-bar]', HTMLElement)
  }

  show(standing: Standing): void {
    const status = part(this.#bar, '[data-status]', HTMLElement)
    const [words, next] = lines(standing)
    // Updated only on change, as screen readers announce it.
    if (status.textContent !== words) status.textContent = words
    part(this.#bar, '[data-next]', HTMLElement).replaceChildren(...next)
    part(this.#bar, '[data-act="see-plan"]', HTMLButtonElement).disabled = standing.plan === null
  }
}

function lines({ plan, old, missing, problems, trouble }: Standing): readonly [string, readonly Node[]] {
  const [problem] = problems
  const [first] = missing
  const kept = plan === null || !old ? '' : ' The plan shown is from your earlier answers.'
  if (problem !== undefined)
    return [`${problems.length === 1 ? 'One answer' : `${problems.length} answers`} can’t be used.${kept}`, [go(problem.path, `Mend: ${problem.title}`)]]
  if (plan?.kind === 'refused') return ['Refused: the wire ends here.', []]
  if (first !== undefined) return [`${missingWords(missing.length)}${kept}`, [go(first.path, `Next: ${first.title}`)]]
  if (trouble !== null) return [`This job can’t be planned: ${trouble}.${kept}`, []]
  return plan === null ? ['Planning…', []] : [`${kindWords[plan.kind]}: ${plan.verdict}.`, []]
}
