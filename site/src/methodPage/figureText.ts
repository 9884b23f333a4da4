/** A computed figure with one digit more than printed, so that the difference shows. */
export function figureText(got: number, printed: string): string {
  const digits = printed
    .replace(/e.*$/i, '')
    .replace(/^[+-]?0*\.?0*/, '')
    .replace('.', '').length
  const text = got.toPrecision(Math.min(Math.max(digits + 1, 2), 12))
  const plain = /e/.test(text) && Math.abs(got) < 1e7 && Math.abs(got) >= 1e-4 ? String(Number(text)) : text
  return plain.replaceAll('-', '−').replace('e+', 'e')
}
