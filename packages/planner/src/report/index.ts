export { reportMarkdown } from './reportMarkdown.ts'
export { reportText } from './reportText.ts'
export { numberText, statusMark } from './words.ts'
