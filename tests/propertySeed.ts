import fc from 'fast-check'

/** One seed for all property tests, so that a change is judged by its own merit; another through STRANDWISE_SEED, as the long proof does. */
const usualSeed = 20261125

fc.configureGlobal({ seed: Number(process.env.STRANDWISE_SEED ?? usualSeed) })
