const door = document.querySelector<HTMLAnchorElement>('[data-search]')
const openDialog = (): void => void import('./openSearch.ts').then(({ openSearch }) => openSearch(door?.dataset.search ?? '/'))

door?.addEventListener('click', (event) => {
  event.preventDefault()
  openDialog()
})
addEventListener('keydown', (event) => {
  const typing = event.target instanceof HTMLElement && event.target.matches('input, textarea, select')
  if (event.key !== '/' || typing || event.ctrlKey || event.metaKey || event.altKey) return
  event.preventDefault()
  openDialog()
})

// Without an import or export of its own TypeScript would take these names for globals.
export {}
