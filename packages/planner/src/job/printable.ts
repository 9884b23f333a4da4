/**
 * Control and formatting characters: they move a terminal's cursor, colour it, turn the reading direction or begin a line of their own.
 * A tab or a line feed is none of the words of a job either.
 */
const unprintable = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu

/** A text from outside as it may stand in a line of ours: what can't be printed is shown as its code point, "\u{1b}". */
export function printable(text: string): string {
  return text.replace(unprintable, (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`)
}
