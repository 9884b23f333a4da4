/** A solver that did not settle; residual is what was left, in the unit its model states. */
export class ConvergenceError extends Error {
  override readonly name = 'ConvergenceError'
  readonly code = 'not-converged'
  readonly residual: number

  constructor(what: string, residual: number) {
    super(`${what} did not settle; residual ${residual}`)
    this.residual = residual
  }
}
