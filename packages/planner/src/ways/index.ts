export type { Way } from './way.ts'
