import { issueLine, JobError, migrateJob, parseRepairJob } from '../job/index.ts'
import { type FoundReadings, type RepairProof, recordHtml, recordMarkdown, verifyRepair } from '../proof/index.ts'
import { formatOf } from './format.ts'
import { readJson } from './readText.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'
import { named, Unusable } from './unusable.ts'

const formats: Readonly<Record<string, (proof: RepairProof) => string>> = {
  markdown: ({ record }) => recordMarkdown(record),
  html: ({ record }) => recordHtml(record),
  json: (proof) => `${JSON.stringify(proof, null, 2)}\n`,
}

/** strandwise prove: reads a job and the findings on the finished repair, prints the record. */
export async function prove(files: readonly string[], { format, strict = false }: Options, streams: Streams): Promise<number> {
  const print = formatOf(formats, format)
  const [jobFile, foundFile] = files
  if (jobFile === undefined || foundFile === undefined) throw new Unusable('prove: give two files, the job and what was found on the finished repair')
  if (jobFile === '-' && foundFile === '-') throw new Unusable('prove: only one of the two files can be standard input')
  const jobInput = await read(jobFile, streams, 'a job as "strandwise demo bilge-pump-feed" prints one')
  const found = await read(foundFile, streams, 'what was found: { "date": "2026-05-04", "readings": [], "ratio": [] }')
  try {
    const proof = verifyRepair(parseRepairJob(migrateJob(jobInput)), found as FoundReadings)
    streams.stdout.write(print(proof))
    if (proof.verdict === 'failed') return exitCodes.unsound
    return strict && proof.verdict === 'not proven' ? exitCodes.unsound : exitCodes.sound
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    throw new Unusable(...error.issues.map((issue) => `${issue.path.startsWith('found') ? foundFile : jobFile}: ${issueLine(issue)}`))
  }
}

async function read(name: string, streams: Streams, wanted: string): Promise<unknown> {
  try {
    return await readJson(name, streams.stdin, wanted)
  } catch (error) {
    if (error instanceof Unusable) throw named(name, error)
    throw error
  }
}
