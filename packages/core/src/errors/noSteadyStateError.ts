/** No steady temperature exists (runaway), or it is above the ceiling; largestCurrentA is the current that reaches ceilingC. */
export class NoSteadyStateError extends RangeError {
  override readonly name = 'NoSteadyStateError'
  readonly code: 'runaway' | 'ceiling'
  override readonly cause: 'runaway' | 'ceiling'
  readonly largestCurrentA: number
  readonly ceilingC: number

  constructor(cause: 'runaway' | 'ceiling', largestCurrentA: number, ceilingC: number) {
    super(
      cause === 'runaway'
        ? `no steady temperature: heating outruns cooling; up to ${largestCurrentA.toPrecision(4)} A it stays below ${ceilingC} °C`
        : `the steady temperature passes ${ceilingC} °C; up to ${largestCurrentA.toPrecision(4)} A it stays below`,
    )
    this.code = cause
    this.cause = cause
    this.largestCurrentA = largestCurrentA
    this.ceilingC = ceilingC
  }
}
