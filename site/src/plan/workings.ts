import { drawn } from './dom.ts'
import type { PlanClient } from './planClient.ts'
import type { Workbench } from './workbench.ts'

/** The working of a formula is fetched when it is opened for the first time. */
export async function openWorking(target: EventTarget | null, bench: Workbench, client: PlanClient): Promise<void> {
  if (!(target instanceof HTMLDetailsElement) || !target.open || target.dataset.working === undefined) return
  const place = target.querySelector('[data-working-of]')
  const working = bench.plan?.workings.find(({ key }) => key === target.dataset.working)
  if (place === null || working === undefined || place.childElementCount > 0) return
  const markup = await client.ask({ ask: 'working', id: working.id, inputs: working.inputs })
  if (markup !== null) place.replaceChildren(drawn(markup))
}
