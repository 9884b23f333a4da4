/** Keeps the site for use without a network; tells of a new version in a sentence, and takes it when asked. */
const notice = document.querySelector<HTMLElement>('[data-new-version]')

function offer(waiting: ServiceWorker): void {
  if (notice === null) return
  notice.hidden = false
  notice.querySelector('button')?.addEventListener('click', () => waiting.postMessage({ type: 'SKIP_WAITING' }))
}

function register(address: string): void {
  navigator.serviceWorker
    .register(address)
    .then((found) => {
      const controlled = navigator.serviceWorker.controller !== null
      if (found.waiting !== null && controlled) offer(found.waiting)
      found.addEventListener('updatefound', () => {
        const worker = found.installing
        worker?.addEventListener('statechange', () => {
          if (worker.state === 'installed' && navigator.serviceWorker.controller !== null) offer(worker)
        })
      })
      if (controlled) navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    })
    .catch(() => undefined)
}

/** Keeping all pages may wait until this one is there. */
if ('serviceWorker' in navigator && notice !== null) {
  const start = (): void => register(notice.dataset.worker ?? '')
  if (document.readyState === 'complete') start()
  else addEventListener('load', start, { once: true })
}
