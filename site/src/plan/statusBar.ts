import type { RepairPlan } from '@strandwise/planner/report'
import { el, part } from './dom.ts'
import { missingWords } from './formWords.ts'
import type { Missing, Problem } from './readJob.ts'

export interface Standing {
  readonly plan: RepairPlan | null
  /** The stop list ended it. */
  readonly stopped: boolean
  readonly old: boolean
  readonly missing: readonly Missing[]
  readonly problems: readonly (Problem & { readonly title: string })[]
  /** What a model said against a job that the checks let through; none is known that does. */
  readonly trouble: string | null
}

/** The bar itself says where to go next: it is asked again at the tap, when the field that was left has been read. */
const go = (path: string, words: string) => el('button', { type: 'button', 'data-goto': path, 'data-from-bar': true }, words)

/** One line at the foot of the window: where the plan stands, and where to go next. */
export class StatusBar {
  readonly #bar: HTMLElement

  constructor(root: HTMLElement) {
    this.#bar = part(root, '[data-bar]', HTMLElement)
  }

  show(standing: Standing): void {
    const status = part(this.#bar, '[data-status]', HTMLElement)
    const [words, next] = lines(standing)
    // Said again only where it changed: the line is read out.
    if (status.textContent !== words) status.textContent = words
    part(this.#bar, '[data-next]', HTMLElement).replaceChildren(...next)
  }
}

function lines({ plan, stopped, old, missing, problems, trouble }: Standing): readonly [string, readonly Node[]] {
  const [problem] = problems
  const [first] = missing
  const kept = plan === null || (!old && trouble === null) ? '' : ' The plan shown is from your earlier answers.'
  if (problem !== undefined)
    return [`${problems.length === 1 ? 'One answer' : `${problems.length} answers`} can’t be used.${kept}`, [go(problem.path, `Mend: ${problem.title}`)]]
  if (first !== undefined && (plan === null || old)) {
    return [`${missingWords(missing.length)}${kept}`, [go(first.path, `Next: ${first.title}`)]]
  }
  if (trouble !== null) return [`This job can’t be planned: ${trouble}.${kept}`, []]
  if (plan === null) return ['No plan yet.', []]
  if (stopped) return ['Verdict: refused. The wire ends.', [el('a', { href: '#section-before' }, 'See why')]]
  const worst = plan.sections.find((section) => section.verdict === plan.verdict)
  const where = worst === undefined || plan.verdict === 'sound' ? [] : [el('a', { href: `#section-${worst.id}` }, `First at: ${worst.title}`)]
  return [`Verdict: ${plan.verdict}.`, [...where, el('a', { href: '#after-steps' }, 'Steps')]]
}
