import type { Finding, TreeFile } from './tree.ts'

/** Words in pieces, so that this file passes its own check. */
const piece = (...parts: readonly string[]): string => parts.join('')

const patterns: readonly { readonly pattern: RegExp; readonly found: string; readonly instead: string }[] = [
  {
    pattern: new RegExp(piece('(?<![\\w.~-])/', '(work|tmp|home|root|Users|var/folders)', '/[\\w.-]+')),
    found: 'a path of one machine',
    instead: "a path relative to the root, or the system's own temporary folder",
  },
  {
    pattern: new RegExp(piece('registry', '\\.(npmjs|yarnpkg|npmmirror)', '\\.'), 'i'),
    found: 'the host of a registry',
    instead: 'name the package; the client knows its registry',
  },
  {
    pattern: new RegExp(piece('\\b(local', 'host|127\\.0\\.0\\.1):\\d{2,5}\\b')),
    found: 'an address on one machine',
    instead: 'ask the server for its address',
  },
  { pattern: new RegExp(piece('\\b(TO', 'DO|FIX', 'ME|X', 'XX)\\b')), found: 'a note to finish later', instead: 'finish it, or leave it out' },
]

/** Third-party data, and files that necessarily contain addresses. */
const exempt = /^(package-lock\.json$|references\/data\/|tests\/results\/)/

/** Words about anything but the project. */
export function strayWords(files: readonly TreeFile[]): readonly Finding[] {
  return files
    .filter(({ path }) => !exempt.test(path))
    .flatMap(({ path, text }) =>
      text
        .split('\n')
        .flatMap((line, index) =>
          patterns
            .filter(({ pattern }) => pattern.test(line))
            .map(({ pattern, found, instead }) => ({ path, line: index + 1, found: `${found}, "${pattern.exec(line)?.[0]}"`, instead })),
        ),
    )
}
