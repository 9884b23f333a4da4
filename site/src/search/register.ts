const door = document.querySelector<HTMLAnchorElement>('[data-search]')
const open = (): void => void import('./openSearch.ts').then(({ openSearch }) => openSearch(door?.dataset.search ?? '/'))

door?.addEventListener('click', (event) => {
  event.preventDefault()
  open()
})
addEventListener('keydown', (event) => {
  const typing = event.target instanceof HTMLElement && event.target.matches('input, textarea, select')
  if (event.key !== '/' || typing || event.ctrlKey || event.metaKey || event.altKey) return
  event.preventDefault()
  open()
})
