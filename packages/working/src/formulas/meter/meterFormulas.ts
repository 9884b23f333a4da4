import { continuityProofFormula } from './continuityProof.ts'
import { dropTestVerdictFormula } from './dropTestVerdict.ts'
import { fourWireResistanceOhmFormula } from './fourWireResistanceOhm.ts'
import { readingIntervalFormula } from './readingInterval.ts'
import { twoWireProofFormula } from './twoWireProof.ts'

/** Every formula of the room meter. */
export const meterFormulas = [
  continuityProofFormula,
  dropTestVerdictFormula,
  fourWireResistanceOhmFormula,
  readingIntervalFormula,
  twoWireProofFormula,
] as const
