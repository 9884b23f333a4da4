import { onward } from './onward.mjs'

await onward('tests/prove/main.ts')
