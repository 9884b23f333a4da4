import { fuseProtectsWireFormula } from './fuseProtectsWire.ts'
import { prospectiveCurrentAFormula } from './prospectiveCurrentA.ts'
import { terminalCurrentAFormula } from './terminalCurrentA.ts'

/** Every formula of the room protection. */
export const protectionFormulas = [fuseProtectsWireFormula, prospectiveCurrentAFormula, terminalCurrentAFormula] as const
