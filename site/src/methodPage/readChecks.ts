import { countsByFunction, countsBySource } from '../../../references/count/counts.ts'
import { figures } from '../../../references/count/figures.ts'
import { models } from '../../../references/count/models.ts'
import { unchecked } from '../../../references/count/unchecked.ts'
import type { ModelFacts, SourceFacts } from './facts.ts'

/** Computes every figure of references/ during the build, counted by source and by the models that it checks. */
export async function runChecks(): Promise<{ readonly sources: readonly SourceFacts[]; readonly models: readonly ModelFacts[] }> {
  const all = await figures()
  const byFunction = new Map(countsByFunction(all).map((one) => [one.name, one.counts]))
  return {
    sources: countsBySource(all).map(({ name, ...counted }) => ({ source: name, ...counted })),
    models: [...new Set(models())]
      .sort((a, b) => a.localeCompare(b))
      .map((name) => ({ name, counts: byFunction.get(name) ?? {}, reason: unchecked[name] ?? null })),
  }
}
