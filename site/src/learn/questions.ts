import type { Question } from './question/question.ts'

const found = import.meta.glob<Readonly<Record<string, Question<unknown>>>>('./questions/*/question.ts', { eager: true })

/** Order of the list; unnamed questions come last. */
const order = [
  'wire-size',
  'run-drop',
  'current-here',
  'fuse',
  'sleeve-from-stock',
  'overlap',
  'will-it-flow',
  'crimp',
  'bundle',
  'reading-proves',
  'drop-limit',
  'together',
]
const rank = (id: string): number => (order.indexOf(id) + order.length + 1) % (order.length + 1)

/** Every question with the folder of its model, in list order. */
export const questions: readonly (Question<unknown> & { readonly folder: string })[] = Object.entries(found)
  .flatMap(([path, module]) => Object.values(module).map((question) => ({ ...question, folder: path.split('/').at(-2) ?? '' })))
  .sort((a, b) => rank(a.id) - rank(b.id))
