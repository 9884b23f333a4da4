/** A solver did not converge; residual is its last error, in the model's unit. */
export class ConvergenceError extends Error {
  override readonly name = 'ConvergenceError'
  readonly code = 'not-converged'
  readonly residual: number

  constructor(what: string, residual: number) {
    super(`${what} did not settle; residual ${residual}`)
    this.residual = residual
  }
}
