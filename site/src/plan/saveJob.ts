/** Offers the job as a file to be kept by the person. */
export function saveJobText(text: string, title: string | undefined): void {
  const name = (title ?? 'repair job')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  const anchor = document.createElement('a')
  anchor.href = address
  anchor.download = `${name === '' ? 'repair-job' : name}.json`
  anchor.click()
  URL.revokeObjectURL(address)
}
