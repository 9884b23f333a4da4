import type { SectionId } from '@strandwise/planner'
import { drawn } from './dom.ts'
import type { PlanClient } from './planClient.ts'
import type { Workbench } from './workbench.ts'

/** What stands behind a section or a working is fetched when it is opened. */
export async function openDetails(target: EventTarget | null, bench: Workbench, client: PlanClient): Promise<void> {
  if (!(target instanceof HTMLDetailsElement) || !target.open) return
  if (target.dataset.working !== undefined) await openWorking(target, bench, client)
  if (target.dataset.section !== undefined) await openSection(target, client)
}

async function openWorking(target: HTMLDetailsElement, bench: Workbench, client: PlanClient): Promise<void> {
  const place = target.querySelector('[data-working-of]')
  const working = bench.plan?.workings.find(({ key }) => key === target.dataset.working)
  if (place === null || working === undefined || place.childElementCount > 0) return
  const markup = await client.ask({ ask: 'working', id: working.id, inputs: working.inputs })
  if (markup !== null) place.replaceChildren(drawn(markup))
}

/** The markup in each place, so that an unchanged one keeps its state. */
const shown = new WeakMap<HTMLElement, string>()

/** Chart and rules of a section. */
async function openSection(target: HTMLDetailsElement, client: PlanClient): Promise<void> {
  const place = target.querySelector<HTMLElement>('[data-later]')
  if (place === null) return
  const markup = await client.ask({ ask: 'section', id: target.dataset.section as SectionId })
  if (markup === null || shown.get(place) === markup) return
  const open = [...place.querySelectorAll('details[open]')].map(({ id }) => id)
  place.replaceChildren(drawn(markup))
  shown.set(place, markup)
  for (const details of place.querySelectorAll('details')) details.open = open.includes(details.id)
  if (place.querySelector('live-chart') !== null) (await import('../charts/liveChart.ts')).defineLiveChart()
}

/** After a new plan: opened sections show its chart and rules. */
export function refreshOpen(root: HTMLElement, client: PlanClient): void {
  for (const details of root.querySelectorAll<HTMLDetailsElement>('details[data-section][open]')) void openSection(details, client)
}
