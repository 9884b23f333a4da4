/** Delays page changes after leaving a field by a tap, so that the target does not move before the tap is done. */
export class PointerGate {
  readonly #commit: (path: string) => void
  #down = false
  #waiting: string | null = null

  constructor(commit: (path: string) => void) {
    this.#commit = commit
  }

  watch(root: HTMLElement, signal: AbortSignal): void {
    root.addEventListener(
      'pointerdown',
      () => {
        this.#down = true
      },
      { signal, capture: true },
    )
    for (const name of ['pointerup', 'pointercancel']) {
      window.addEventListener(
        name,
        () => {
          this.#down = false
          this.#settle()
        },
        { signal },
      )
    }
  }

  /** Calls back for the field once no pointer is down. */
  wait(path: string): void {
    this.#waiting = path
    this.#settle()
  }

  /** Calls back at once; true if a field was waiting. */
  now(): boolean {
    const path = this.#waiting
    this.#waiting = null
    if (path !== null) this.#commit(path)
    return path !== null
  }

  /** Calls back after this event or, with a pointer down, after its release and click. */
  #settle(): void {
    setTimeout(() => {
      if (!this.#down) this.now()
    })
  }
}
