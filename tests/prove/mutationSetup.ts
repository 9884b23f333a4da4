import fc from 'fast-check'

/** A mutant is told by the first case that fails; the search for a simpler one would only take time. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true })
