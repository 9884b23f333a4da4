import { bundled } from '../sizes/bundle.ts'
import { ceilings } from '../sizes/ceilings.ts'
import type { Figure } from './report.ts'

/** What a user ships, minified and compressed, against the ceilings that tests/sizes holds. */
export async function sizes(): Promise<readonly Figure[]> {
  const figures: Figure[] = []
  for (const { what, code, leftOut, atMost } of ceilings) figures.push({ what, value: (await bundled(code, leftOut)).gzipBytes, unit: 'bytes', atMost })
  return figures
}
