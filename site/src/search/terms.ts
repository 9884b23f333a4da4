/** Stop words. */
const idle = new Set(
  'a after also an and any are as at be been before both but by can do does each find for from get gets had has have how i if in into is it its much my of on or so than that the their them then there these they this those to too until was were what when where which will with you your'.split(
    ' ',
  ),
)

/** "awgToAreaMm2" is also split into its words. */
export const tokenize = (text: string): string[] => text.replace(/([a-z0-9])([A-Z])/g, '$1 $2').split(/[^\p{L}\p{N}/.]+/u)

/** Normalises a word for the index: lower case, singular; null for a stop word. */
export function term(word: string): string | null {
  const plain = word.toLowerCase().replace(/^[./]+|[./]+$/g, '')
  // Numbers with decimals and long numbers are not indexed.
  if (plain === '' || idle.has(plain) || /^\d+[.]\d/.test(plain) || /^\d{4,}$/.test(plain)) return null
  return plain.length > 3 ? plain.replace(/(?<=[^s])s$/, '') : plain
}
