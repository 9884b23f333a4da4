export * from './demo/index.ts'
export * from './job/index.ts'
export * from './plan/index.ts'
export * from './report/index.ts'
