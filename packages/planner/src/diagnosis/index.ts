export { diagnose } from './diagnosisOf.ts'
export type { CauseId, Diagnosis, Probe, Stretch } from './diagnosisShapes.ts'
