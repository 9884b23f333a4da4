/** Offers a text as a download. */
export function saveText(
  text: string | Blob,
  title: string | undefined,
  kind: { readonly ending: 'json' | 'html' | 'csv'; readonly type: string; readonly name: string },
): void {
  const name = (title ?? kind.name)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
  const address = URL.createObjectURL(new Blob([text], { type: kind.type }))
  const anchor = document.createElement('a')
  anchor.href = address
  anchor.download = `${name === '' ? kind.name : name}.${kind.ending}`
  anchor.click()
  URL.revokeObjectURL(address)
}
