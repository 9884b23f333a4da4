export { verdictDefaults } from './verdictDefaults.ts'
export type { FuseKind, SizeFound, SizeStandard, Verdict, WireCode, WireFinding, WireJob, WireVerdict } from './wireJob.ts'
export { wireVerdict } from './wireVerdict.ts'
