import { prospectiveCurrentAFormula } from './prospectiveCurrentA.ts'
import { terminalCurrentAFormula } from './terminalCurrentA.ts'

/** Every formula of the room protection. */
export const protectionFormulas = [prospectiveCurrentAFormula, terminalCurrentAFormula] as const
