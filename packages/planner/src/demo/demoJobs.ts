import type { RepairJob } from '../job/repairJob.ts'
import { bilgePumpFeed } from './bilgePumpFeed.ts'
import { trailerTailLamp } from './trailerTailLamp.ts'

/** Invented jobs to start from; no real place, person or product. */
export const demoJobs: Readonly<Record<string, RepairJob>> = {
  'bilge-pump-feed': bilgePumpFeed,
  'trailer-tail-lamp': trailerTailLamp,
}
