export type { CauseRanking, RankedCause } from './causes/rankFrom.ts'
export { diagnose } from './diagnosisOf.ts'
export type { CauseId, Diagnosis, Probe, Stretch } from './diagnosisShapes.ts'
export { rankCauses } from './rankCauses.ts'
