export { bilgePumpFeed } from './bilgePumpFeed.ts'
export { demoJobs } from './demoJobs.ts'
export { trailerTailLamp } from './trailerTailLamp.ts'
