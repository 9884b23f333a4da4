import { sleeveFromStockQuestion } from './sleeveFromStock/question.ts'
import { wireSizeQuestion } from './wireSize/question.ts'

/** Every question, in the order of the list. */
export const questions: readonly { readonly id: string; readonly title: string; readonly summary: string }[] = [wireSizeQuestion, sleeveFromStockQuestion]
