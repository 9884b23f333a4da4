export { ConvergenceError } from './convergenceError.ts'
export { type DomainCode, DomainError } from './domainError.ts'
export { NoSteadyStateError } from './noSteadyStateError.ts'
export type { Reason } from './reason.ts'
export {
  absoluteZeroC,
  requireAboveUpTo,
  requireBetween,
  requireChoice,
  requireFinite,
  requireFiniteResult,
  requireNotNegative,
  requirePositive,
  requireTemperature,
  requireWhole,
} from './require.ts'
export { UnknownEntryError } from './unknownEntryError.ts'
