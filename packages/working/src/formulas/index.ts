export { type Explanation, explain } from './explain.ts'
export type { ClosedFormula, Formula, FormulaResult, FormulaStep, FormulaSymbol, Inputs, Solution, SolvedFormula, SolvedTerm, ValuedSymbol } from './formula.ts'
export { formulas } from './formulas.ts'
