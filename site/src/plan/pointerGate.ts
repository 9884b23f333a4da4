/** Leaving a field by a tap changes the page: that must not move what is being tapped before the tap is done. */
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

  /** The field counts as left once no finger and no mouse button is down. */
  wait(path: string): void {
    this.#waiting = path
    this.#settle()
  }

  /** Without waiting any longer; true where a field was waiting. */
  now(): boolean {
    const path = this.#waiting
    this.#waiting = null
    if (path !== null) this.#commit(path)
    return path !== null
  }

  /** After this event and, where a pointer is down, after it is up and its click is given. */
  #settle(): void {
    setTimeout(() => {
      if (!this.#down) this.now()
    })
  }
}
