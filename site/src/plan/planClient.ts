import type { PlanReplies, PlanRequest, PlanResult } from './planMessages.ts'

/** An unusable link or file; its message is shown to the person who opened it. */
export class Refused extends Error {
  override readonly name = 'Refused'
}

/** A plan that takes longer than this while newer answers wait is dropped by restarting the worker. */
const patienceMs = 2000

type Ask = PlanRequest['ask']
interface Waiting {
  readonly done: (result: PlanResult) => void
  readonly since: number
  readonly overtaken: () => void
  readonly isPlan: boolean
}

/** The page's side of its worker. Of several requested plans only the newest counts. */
export class PlanClient {
  #worker: Worker | null = null
  #waiting = new Map<number, Waiting>()
  #last = 0

  #start(): Worker {
    const worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' })
    worker.addEventListener('message', ({ data }: MessageEvent<{ readonly id: number; readonly result: PlanResult }>) => {
      const waiting = this.#waiting.get(data.id)
      this.#waiting.delete(data.id)
      waiting?.done(data.result)
    })
    return worker
  }

  /** Starts loading the worker's code. */
  wake(): void {
    this.#worker ??= this.#start()
  }

  /**
   * The worker's reply; null for an outdated plan.
   *
   * @throws Refused with a sentence for the person
   */
  ask<A extends Ask>(request: Extract<PlanRequest, { readonly ask: A }>): Promise<PlanReplies[A] | null> {
    const isPlan = request.ask === 'plan'
    if (isPlan) this.drop()
    this.wake()
    this.#last += 1
    const id = this.#last
    return new Promise((resolve, reject) => {
      const done = (result: PlanResult) => {
        if ('value' in result) resolve(result.value as PlanReplies[A])
        else reject('refused' in result ? new Refused(result.refused) : new Error(result.failed))
      }
      this.#waiting.set(id, { done, since: performance.now(), overtaken: () => resolve(null), isPlan })
      this.#worker?.postMessage({ id, request })
    })
  }

  /** Discards the plan in progress. */
  drop(): void {
    const plans = [...this.#waiting].filter(([, waiting]) => waiting.isPlan)
    const stuck = plans.some(([, waiting]) => performance.now() - waiting.since > patienceMs) && plans.length === this.#waiting.size
    for (const [id, waiting] of plans) {
      this.#waiting.delete(id)
      waiting.overtaken()
    }
    if (stuck) {
      this.#worker?.terminate()
      this.#worker = null
    }
  }
}
