import { bundled } from '../sizes/bundle.ts'
import { ceilings } from '../sizes/ceilings.ts'
import type { Figure } from './report.ts'

/** Shipped sizes, minified and compressed, against the ceilings in tests/sizes. */
export async function sizes(): Promise<readonly Figure[]> {
  const figures: Figure[] = []
  for (const { what, code, leftOut, atMost } of ceilings) figures.push({ what, value: (await bundled(code, leftOut)).gzipBytes, unit: 'bytes', atMost })
  return figures
}
