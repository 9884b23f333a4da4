import { Worker } from 'node:worker_threads'
import { auditBatch, type Batch, type JudgedBatch, type ListSetup } from '../audit/inner.ts'

/** Judges batches on this thread or on others. */
export interface AuditPool {
  /** Most batches in flight. */
  readonly most: number
  readonly judge: (batch: Batch) => Promise<JudgedBatch>
  readonly end: () => Promise<unknown>
}

/** A pool of this thread only. */
export function hereOnly(setup: ListSetup): AuditPool {
  return { most: 1, judge: async (batch) => auditBatch(batch, setup), end: async () => undefined }
}

interface Waiting {
  readonly resolve: (judged: JudgedBatch) => void
  readonly reject: (error: Error) => void
}

/** The worker file next to this one, compiled or source. */
const workerFile = new URL(`./auditWorker${import.meta.url.endsWith('.ts') ? '.ts' : '.js'}`, import.meta.url)

/** A pool of so many threads; each takes the next batch when it has finished one. */
export function onThreads(setup: ListSetup, count: number): AuditPool {
  const queue: { readonly batch: Batch; readonly waiting: Waiting }[] = []
  const idle: Worker[] = []
  const current = new Map<Worker, Waiting>()
  const assign = (worker: Worker): void => {
    const next = queue.shift()
    if (next === undefined) {
      idle.push(worker)
      return
    }
    current.set(worker, next.waiting)
    worker.postMessage(next.batch)
  }
  const workers = Array.from({ length: count }, () => {
    const worker = new Worker(workerFile, { workerData: setup })
    worker.on('message', (judged: JudgedBatch) => {
      current.get(worker)?.resolve(judged)
      current.delete(worker)
      assign(worker)
    })
    worker.on('error', (error: Error) => current.get(worker)?.reject(error))
    idle.push(worker)
    return worker
  })
  return {
    most: 2 * count,
    judge: (batch) =>
      new Promise((resolve, reject) => {
        queue.push({ batch, waiting: { resolve, reject } })
        const worker = idle.pop()
        if (worker !== undefined) assign(worker)
      }),
    end: () => Promise.all(workers.map((worker) => worker.terminate())),
  }
}
