/** Registers the offline worker; a page older than the kept site says so, and reloads on request. */
const notice = document.querySelector<HTMLElement>('[data-new-version]')

function offer(build: unknown): void {
  if (notice === null || typeof build !== 'string' || build === notice.dataset.build) return
  notice.hidden = false
  notice.querySelector('button')?.addEventListener('click', () => location.reload())
}

/** Offline files are fetched after this page has loaded. */
if ('serviceWorker' in navigator && notice !== null) {
  const start = (): void => void navigator.serviceWorker.register(notice.dataset.worker ?? '').catch(() => undefined)
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<{ readonly build?: unknown } | null>) => offer(data?.build))
  navigator.serviceWorker.startMessages()
  if (document.readyState === 'complete') start()
  else addEventListener('load', start, { once: true })
}
