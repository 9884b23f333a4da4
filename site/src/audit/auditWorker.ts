import { auditList, ListError } from '@strandwise/planner/audit'
import { type AuditReply, type AuditRequest, type Judged, mostRows } from './auditMessages.ts'
import { JudgedList } from './judgedList.ts'

/** Rows between two looks at the clock. */
const rowsBetween = 500
const tellEveryMs = 200
/** Unknown columns that are told. */
const mostUnused = 20

/** Judges one list off the main thread, and keeps its results: a new list has a new worker. */
let list = new JudgedList()

const tell = (reply: AuditReply) => self.postMessage(reply)

async function* bytesOf(source: Blob): AsyncGenerator<Uint8Array> {
  const reader = source.stream().getReader()
  for (let read = await reader.read(); !read.done; read = await reader.read()) yield read.value
}

/**
 * @throws ListError with what is wrong with the list
 */
async function judge(source: Blob): Promise<Judged> {
  list = new JudgedList()
  const unused: string[] = []
  let toldAt = performance.now()
  for await (const result of auditList(bytesOf(source), (name) => unused.push(name))) {
    list.add(result)
    if (list.length > mostRows)
      throw new ListError(`more than ${mostRows.toLocaleString('en')} rows; allowed here: that many; the command strandwise audit takes any number`)
    if (list.length % rowsBetween !== 0 || performance.now() - toldAt < tellEveryMs) continue
    toldAt = performance.now()
    tell({ told: 'judging', rows: list.length })
  }
  if (list.length === 0) throw new ListError('no row; allowed: a head, and one wire a line below it')
  return { counts: list.counts, rows: list.length, unused: unused.slice(0, mostUnused) }
}

self.addEventListener('message', ({ data }: MessageEvent<AuditRequest>) => {
  if (data.ask === 'rows') {
    const chosen = list.chosen(data.choice)
    tell({ told: 'rows', id: data.id, page: { rows: chosen.slice(data.from, data.from + data.count), of: chosen.length } })
  } else if (data.ask === 'csv') {
    tell({ told: 'csv', id: data.id, text: new Blob([list.csv(data.choice)], { type: 'text/csv' }) })
  } else {
    judge(data.source).then(
      (judged) => tell({ told: 'judged', judged }),
      (error: unknown) => tell({ told: 'refused', lines: error instanceof ListError ? error.lines : [`can't be read (${(error as Error).message})`] }),
    )
  }
})
