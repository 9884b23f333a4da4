export { type Propagated, propagate, propagationDefaults } from './propagate.ts'
export type { Uncertain } from './uncertain.ts'
