export * from './formulas/index.ts'
export * from './quantity/index.ts'
export * from './uncertainty/index.ts'
