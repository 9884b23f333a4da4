export { frozen } from './frozen.ts'
export { entryAt } from './unknownEntryError.ts'
