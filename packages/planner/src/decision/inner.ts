// Internal exports for later rooms of the planner.
export { type Deciding, decide, terminalName, wireText } from './decide.ts'
export type { Decided, Grounds } from './decisionKind.ts'
export { stopList } from './stopList.ts'
