import { onward } from './onward.mjs'

await onward('tests/bench/main.ts')
