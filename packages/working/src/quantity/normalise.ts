/** Look-alike characters from phones and word processors, and their plain form. */
const twins: Readonly<Record<string, string>> = {
  '\u2212': '-',
  '\u2010': '-',
  '\u2011': '-',
  '\u2013': '-',
  '\u00b5': 'u',
  '\u03bc': 'u',
  '\u2126': 'ohm',
  '\u03a9': 'ohm',
  '\u2032': "'",
  '\u2019': "'",
  '\u2018': "'",
  '\u2033': '"',
  '\u201d': '"',
  '\u201c': '"',
  '\u00ba': '°',
  '\u02da': '°',
  '\u2103': '°C',
  '\u2109': '°F',
  '\u212a': 'K',
  '\u00d7': 'x',
  '\u2715': 'x',
  '\u00b7': '*',
  '\u22c5': '*',
  '\u2219': '*',
  '\u2044': '/',
  '\u2215': '/',
  '\u0394': 'Δ',
  '\u2206': 'Δ',
  '\u2236': ':',
}
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'
/** One-character fractions; their Unicode compatibility form gives the parts. */
const fractions = /[\u00bc-\u00be\u2150-\u215e]/g

/** The text in plain characters: one kind of space, minus, micro and ohm sign; superscripts after "^"; fractions spelt out. One-character units (㎟) become letters by their compatibility form. */
export function normalise(text: string): string {
  const plain = /^[\x21-\x7e]+(?: [\x21-\x7e]+)*$/.test(text) ? text : spellOut(text)
  return plain.replace("''", '"').replace('+/-', '±')
}

function spellOut(text: string): string {
  return text
    .replace(fractions, (fraction) => ` ${fraction.normalize('NFKC').replace('\u2044', '/')}`)
    .replace(/[\u2070\u00b9\u00b2\u00b3\u2074-\u2079\u207b\u207a]+/g, (run) => `^${[...run].map(flat).join('')}`)
    .replace(/[\u0080-\uffff]/g, (character) => twins[character] ?? character)
    .normalize('NFKC')
    .replace(/[^\x21-\x7e]/g, (character) => twins[character] ?? (/\s/.test(character) ? ' ' : character))
    .replace(/ {2,}/g, ' ')
    .trim()
}

function flat(superscript: string): string {
  if (superscript === '\u207b') return '-'
  return superscript === '\u207a' ? '+' : String(superscripts.indexOf(superscript))
}
