/** Keeps the site for use without a network; a page that is older than what is kept now says so, and loads anew when asked. */
const notice = document.querySelector<HTMLElement>('[data-new-version]')

function offer(build: unknown): void {
  if (notice === null || typeof build !== 'string' || build === notice.dataset.build) return
  notice.hidden = false
  notice.querySelector('button')?.addEventListener('click', () => location.reload())
}

/** Keeping all pages may wait until this one is there. */
if ('serviceWorker' in navigator && notice !== null) {
  const start = (): void => void navigator.serviceWorker.register(notice.dataset.worker ?? '').catch(() => undefined)
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<{ readonly build?: unknown } | null>) => offer(data?.build))
  navigator.serviceWorker.startMessages()
  if (document.readyState === 'complete') start()
  else addEventListener('load', start, { once: true })
}
