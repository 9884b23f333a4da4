const numberIn = (text: string): number => Number(text.replace('−', '-'))

/** A table sortable by column and filtered by a word. */
class SortedTable extends HTMLElement {
  connectedCallback(): void {
    const body = this.querySelector('tbody')
    if (body === null) return
    const rows = [...body.rows]
    const heads = [...this.querySelectorAll('th')]
    for (const [column, head] of heads.entries()) {
      const button = document.createElement('button')
      button.type = 'button'
      button.append(...head.childNodes)
      head.append(button)
      button.addEventListener('click', () => {
        const down = head.getAttribute('aria-sort') === 'ascending'
        for (const other of heads) other.removeAttribute('aria-sort')
        head.setAttribute('aria-sort', down ? 'descending' : 'ascending')
        body.append(...rows.toSorted((a, b) => (down ? -1 : 1) * compare(a.cells[column]?.textContent ?? '', b.cells[column]?.textContent ?? '')))
      })
    }
    const filter = this.querySelector<HTMLInputElement>('[data-filter]')
    const count = this.querySelector('[data-count]')
    filter?.addEventListener('input', () => {
      const words = filter.value.toLowerCase().split(/\s+/)
      for (const row of rows) row.hidden = !words.every((word) => (row.textContent ?? '').toLowerCase().includes(word))
      if (count !== null) count.textContent = `${rows.filter((row) => !row.hidden).length} of ${rows.length} rows`
    })
  }
}

/** Order of cells: numbers by size, words alphabetically, empty cells last. */
function compare(a: string, b: string): number {
  if (a === '' || b === '') return Number(a === '') - Number(b === '')
  const [x, y] = [numberIn(a), numberIn(b)]
  if (Number.isNaN(x) || Number.isNaN(y)) return a.localeCompare(b, 'en', { numeric: true })
  return x - y
}

if (customElements.get('sorted-table') === undefined) customElements.define('sorted-table', SortedTable)
