import { type Answers, askedFields, isBlank } from './answers.ts'
import { choiceWord } from './choiceWords.ts'
import { inTheOpen } from './formWords.ts'

const onCard = new Set(['circuit', 'damage', 'wire', 'load'])
const bare = /^[-+−]?[\d.,]+$/

/** The chief answers, as typed, for the head of the job card. */
export function cardFacts(answers: Answers): readonly string[] {
  return askedFields(answers)
    .filter((item) => onCard.has(item.group.id) && inTheOpen(item.group, item.field) && !isBlank(answers, item.field, item.path))
    .map((item) => {
      const text = (answers[item.path] ?? '').trim()
      const unit = bare.test(text) && item.field.unit !== undefined && item.field.unit !== '' ? ` ${item.field.unit}` : ''
      return `${item.field.title.toLowerCase()} ${item.field.shape === 'choice' ? choiceWord(text) : `${text}${unit}`}`
    })
}
