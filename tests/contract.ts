/**
 * The public contract: the names and signatures that users build on. A name keeps its place, its unit and its meaning;
 * new ones are added. tests/repository/contract.test.ts and tests/contract/assignable.ts hold the packages to it.
 */
export * from './contract/circuits.ts'
export * from './contract/context.ts'
export * from './contract/job.ts'
export * from './contract/joints.ts'
export * from './contract/names.ts'
export * from './contract/plan.ts'
export * from './contract/planner.ts'
export * from './contract/shapes.ts'
export * from './contract/wires.ts'
export * from './contract/working.ts'
