import { closest } from 'fastest-levenshtein'
import { demoJobs } from '../demo/index.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'
import { named, Unusable } from './unusable.ts'

/** A demo job by name; an unknown name gets the closest as a suggestion. */
export function demoJob(name: string): unknown {
  const names = Object.keys(demoJobs)
  if (Object.hasOwn(demoJobs, name)) return demoJobs[name]
  throw new Unusable(`no such demo job; there are ${names.join(', ')}; the closest is ${closest(name.slice(0, 60), names)}`)
}

/** strandwise demo: the names of the demo jobs, or one of them as a job file. */
export function demo([name]: readonly string[], _options: Options, { stdout }: Streams): number {
  try {
    stdout.write(name === undefined ? `${Object.keys(demoJobs).join('\n')}\n` : `${JSON.stringify(demoJob(name), null, 2)}\n`)
    return exitCodes.sound
  } catch (error) {
    throw error instanceof Unusable ? named(`demo ${name}`, error) : error
  }
}
