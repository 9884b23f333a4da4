import type { AuditReply, AuditRequest, Judged, Rows } from './auditMessages.ts'
import type { Choice } from './judgedList.ts'

/** A list that can't be used; each line says what is wrong and what is allowed. */
export class RefusedList extends Error {
  override readonly name = 'RefusedList'
  readonly lines: readonly string[]

  constructor(lines: readonly string[]) {
    super(lines.join('\n'))
    this.lines = lines
  }
}

/** The worker of one judged list. */
class ListWorker {
  readonly #worker = new Worker(new URL('./auditWorker.ts', import.meta.url), { type: 'module' })
  readonly #waiting = new Map<number, (reply: AuditReply) => void>()
  #last = 0

  judge(source: Blob, onRows: (rows: number) => void): Promise<Judged> {
    return new Promise((resolve, reject) => {
      this.#worker.addEventListener('message', ({ data }: MessageEvent<AuditReply>) => {
        if (data.told === 'judging') onRows(data.rows)
        else if (data.told === 'judged') resolve(data.judged)
        else if (data.told === 'refused') reject(new RefusedList(data.lines))
        else {
          this.#waiting.get(data.id)?.(data)
          this.#waiting.delete(data.id)
        }
      })
      this.#worker.addEventListener('error', () =>
        reject(new RefusedList(['this browser ran out of memory or could not load the models; allowed: a shorter list'])),
      )
      this.#send({ ask: 'judge', source })
    })
  }

  async rows(choice: Choice, from: number, count: number): Promise<Rows> {
    const reply = await this.#ask((id) => ({ ask: 'rows', id, choice, from, count }))
    return reply.told === 'rows' ? reply.page : { rows: [], of: 0 }
  }

  async csv(choice: Choice | null): Promise<Blob> {
    const reply = await this.#ask((id) => ({ ask: 'csv', id, choice }))
    return reply.told === 'csv' ? reply.text : new Blob()
  }

  #ask(request: (id: number) => AuditRequest): Promise<AuditReply> {
    this.#last += 1
    const id = this.#last
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve)
      this.#send(request(id))
    })
  }

  #send(request: AuditRequest): void {
    this.#worker.postMessage(request)
  }

  end(): void {
    this.#worker.terminate()
  }
}

/** The present list, and one being judged: that one takes its place only once it has been judged to its end. */
export class AuditClient {
  #present: ListWorker | null = null
  #coming: ListWorker | null = null

  /**
   * What the list came to; null if it was stopped or another one came after it.
   *
   * @throws RefusedList, which leaves the present list as it is
   */
  async judge(source: Blob, onRows: (rows: number) => void): Promise<Judged | null> {
    this.stop()
    const coming = new ListWorker()
    this.#coming = coming
    try {
      const judged = await coming.judge(source, (rows) => {
        if (this.#coming === coming) onRows(rows)
      })
      if (this.#coming !== coming) return null
      this.#present?.end()
      this.#present = coming
      this.#coming = null
      return judged
    } catch (error) {
      if (this.#coming === coming) this.stop()
      throw error
    }
  }

  /** Ends the list being judged. */
  stop(): void {
    this.#coming?.end()
    this.#coming = null
  }

  rows(choice: Choice, from: number, count: number): Promise<Rows> {
    return this.#present?.rows(choice, from, count) ?? Promise.resolve({ rows: [], of: 0 })
  }

  csv(choice: Choice | null): Promise<Blob> {
    return this.#present?.csv(choice) ?? Promise.resolve(new Blob())
  }
}
