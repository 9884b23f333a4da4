/** Words that say nothing about where they stand. */
const idle = new Set(
  'a an and are as at be by can do does find for from get gets how i in is it its much my of on or that the this to what when where which will with you your'.split(
    ' ',
  ),
)

/** "awgToAreaMm2" as its words too. */
export const tokenize = (text: string): string[] => text.replace(/([a-z0-9])([A-Z])/g, '$1 $2').split(/[^\p{L}\p{N}/.]+/u)

/** A word as it is looked up: without case, without the s of a plural; null where it says nothing. */
export function term(word: string): string | null {
  const plain = word.toLowerCase().replace(/^[./]+|[./]+$/g, '')
  // A figure with decimals is looked up by nobody.
  if (plain === '' || idle.has(plain) || /^\d+[.]\d/.test(plain) || /^\d{4,}$/.test(plain)) return null
  return plain.length > 3 ? plain.replace(/(?<=[^s])s$/, '') : plain
}
