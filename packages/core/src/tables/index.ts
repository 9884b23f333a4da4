export { type FusePoint, type FuseSeries, fuseBands } from './fuseBands.ts'
