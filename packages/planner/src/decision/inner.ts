// What the planner's later rooms build on and no user sees.
export { type Deciding, decide, terminalName } from './decide.ts'
export type { Decided, Grounds } from './decisionKind.ts'
export { stopList } from './stopList.ts'
