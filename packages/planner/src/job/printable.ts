/** Control and formatting characters: they move a terminal's cursor, colour it, change the reading direction or break the line. Tab and line feed count too. */
const unprintable = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu

/** Outside text made safe for a line of output: an unprintable character becomes its code point, "\u{1b}". */
export function printable(text: string): string {
  return text.replace(unprintable, (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`)
}
