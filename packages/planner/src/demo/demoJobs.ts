import type { RepairJob } from '../job/index.ts'
import { bilgePumpFeed } from './bilgePumpFeed.ts'
import { gardenRailwayFeeder } from './gardenRailwayFeeder.ts'
import { marketStallFridge } from './marketStallFridge.ts'
import { orchardGate } from './orchardGate.ts'
import { robotMotorLead } from './robotMotorLead.ts'
import { trailerTailLamp } from './trailerTailLamp.ts'

/** Invented jobs to start from; no real place, person or product. */
export const demoJobs: Readonly<Record<string, RepairJob>> = {
  'bilge-pump-feed': bilgePumpFeed,
  'trailer-tail-lamp': trailerTailLamp,
  'market-stall-fridge': marketStallFridge,
  'orchard-gate': orchardGate,
  'robot-motor-lead': robotMotorLead,
  'garden-railway-feeder': gardenRailwayFeeder,
}
