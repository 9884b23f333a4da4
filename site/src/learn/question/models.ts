import type { QuestionModel } from './question.ts'

const answers = import.meta.glob<Readonly<Record<string, QuestionModel<never>>>>('../questions/*/answer.ts')

/** Loads the model of a question from its folder. */
export async function modelIn(folder: string): Promise<QuestionModel<never>> {
  const [model] = Object.values((await answers[`../questions/${folder}/answer.ts`]?.()) ?? {})
  if (model === undefined) throw new Error(`no question is in ${folder}`)
  return model
}
