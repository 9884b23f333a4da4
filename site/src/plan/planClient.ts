import type { PlanReplies, PlanRequest, PlanResult } from './planMessages.ts'

/** A link or file that can't be used; its message is a sentence for the person who opened it. */
export class Refused extends Error {
  override readonly name = 'Refused'
}

/** A plan that takes longer than this is dropped where newer answers wait: the worker is started anew. */
const patienceMs = 2000

type Ask = PlanRequest['ask']
interface Waiting {
  readonly done: (result: PlanResult) => void
  readonly since: number
  readonly overtaken: () => void
  readonly isPlan: boolean
}

/** The page's side of its worker. Of several plans asked for, the newest counts. */
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

  /** Reading and planning begin to load. */
  wake(): void {
    this.#worker ??= this.#start()
  }

  /**
   * The worker's reply; null for a plan that a newer one overtook.
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

  /** Whatever plan is still being made is no longer wanted. */
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
