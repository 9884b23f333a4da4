import { JobError, planRepair, planWithPictures } from '@strandwise/planner'
import fc from 'fast-check'
import { anyJob } from './anyJob.ts'

/** One job in so many is drawn as well as planned, as pictures compute heating again. */
const drawnEach = 25

/** Plans random jobs: each is planned or refused. Any other error fails, with the smallest job that shows it. */
export function planOrRefuse(runs: number, seed: number): { readonly planned: number; readonly refused: number } {
  let [planned, refused] = [0, 0]
  fc.assert(
    fc.property(anyJob, (job) => {
      const drawn = (planned + refused) % drawnEach === 0
      try {
        const draw = drawn ? planWithPictures : planRepair
        draw(job)
        planned += 1
      } catch (error) {
        if (!(error instanceof JobError)) throw error
        refused += 1
      }
    }),
    { numRuns: runs, seed, includeErrorInReport: true },
  )
  return { planned, refused }
}
