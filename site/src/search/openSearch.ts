import { type Found, finder } from './find.ts'

const kinds: Readonly<Record<string, string>> = {
  plan: 'Page',
  question: 'Question',
  lesson: 'Lesson',
  function: 'Handbook',
  table: 'Table',
  material: 'Material',
  rule: 'Rule',
}

function dialogIn(base: string): HTMLDialogElement {
  const dialog = document.createElement('dialog')
  dialog.className = 'search'
  dialog.setAttribute('aria-label', 'Search')
  dialog.innerHTML = `<form method="dialog"><label for="search-words">Search</label><input id="search-words" type="search" role="combobox" aria-expanded="true" aria-controls="search-found" aria-autocomplete="list" autocomplete="off" spellcheck="false"><button>Close</button></form><p role="status" class="hint"></p><ul id="search-found" role="listbox" aria-label="Found"></ul>`
  dialog.dataset.base = base
  document.body.append(dialog)
  return dialog
}

/** Opens the search: typing, arrow keys, Enter. */
export async function openSearch(base: string): Promise<void> {
  const dialog = document.querySelector<HTMLDialogElement>('dialog.search') ?? dialogIn(base)
  const input = dialog.querySelector('input')
  const list = dialog.querySelector('ul')
  const said = dialog.querySelector('p')
  if (input === null || list === null || said === null) return
  if (!dialog.open) dialog.showModal()
  input.focus()
  if (dialog.dataset.ready === 'yes') return
  dialog.dataset.ready = 'yes'
  said.textContent = 'Loading…'
  const answer = await fetch(`${base}search.json`).catch(() => null)
  if (answer === null || !answer.ok) {
    dialog.dataset.ready = ''
    said.textContent = 'The index could not be loaded. The handbook’s contents list everything.'
    return
  }
  const find = finder(await answer.text())
  let at = 0
  const options = (): readonly HTMLElement[] => [...list.querySelectorAll<HTMLElement>('[role="option"]')]
  const mark = (): void => {
    for (const [index, option] of options().entries()) option.setAttribute('aria-selected', String(index === at))
    const marked = options()[at]
    if (marked === undefined) input.removeAttribute('aria-activedescendant')
    else input.setAttribute('aria-activedescendant', marked.id)
    marked?.scrollIntoView({ block: 'nearest' })
  }
  const show = (found: readonly Found[]): void => {
    at = 0
    list.replaceChildren(
      ...found.map(({ title, kind, path }, index) => {
        const option = document.createElement('li')
        option.id = `found-${index}`
        option.setAttribute('role', 'option')
        option.dataset.path = path
        const words = document.createElement('span')
        words.textContent = ` ${kinds[kind] ?? kind}`
        option.append(title, words)
        return option
      }),
    )
    said.textContent =
      input.value.trim() === '' ? 'Words as you say them: ampacity, voltage drop, 18 gauge, butt connector.' : found.length === 0 ? 'Nothing found.' : ''
    mark()
  }
  const go = (option: HTMLElement | null | undefined): void => {
    if (option?.dataset.path === undefined) return
    dialog.close()
    location.assign(base + option.dataset.path)
  }
  const search = (): void => show(input.value.trim() === '' ? [] : find(input.value))
  input.addEventListener('input', search)
  input.addEventListener('keydown', (event) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
    if (step !== 0) {
      event.preventDefault()
      at = (at + step + options().length) % Math.max(1, options().length)
      mark()
    }
    if (event.key === 'Enter') {
      event.preventDefault()
      go(options()[at])
    }
  })
  list.addEventListener('click', (event) => go(event.target instanceof Element ? event.target.closest<HTMLElement>('[data-path]') : null))
  search()
}
