import fc from 'fast-check'

/** One seed for all property tests, so that a failure comes from the change at hand; STRANDWISE_SEED sets another, as in the long proof. */
const usualSeed = 20261125

fc.configureGlobal({ seed: Number(process.env.STRANDWISE_SEED ?? usualSeed) })
