export { reportMarkdown } from './reportMarkdown.ts'
export { reportText } from './reportText.ts'
export { statusMark, valueText } from './words.ts'
