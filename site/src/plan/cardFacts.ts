import { type Answers, askedFields, isBlank, unitOf } from './answers.ts'
import { choiceWord } from './choiceWords.ts'
import { firstAnswers } from './layout.ts'
import { planForm } from './planForm.ts'

const bare = /^[-+−]?[\d.,]+$/

/** The first answers, as typed, for the head of the job card. */
export function cardFacts(answers: Answers): readonly string[] {
  return askedFields(planForm, answers)
    .filter((item) => firstAnswers.has(item.path) && !isBlank(answers, item.field, item.path))
    .map((item) => {
      const text = (answers[item.path] ?? '').trim()
      const unit = bare.test(text) ? unitOf(item, answers) : ''
      return `${item.field.title}: ${item.field.shape === 'choice' ? choiceWord(text) : `${text} ${unit}`.trim()}`
    })
}
