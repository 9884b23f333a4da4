import fc from 'fast-check'

/** The first failing case kills the mutant; shrinking would only take time. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true })
