import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate'
import { checkedJob, LinkError, refuseDeepNesting } from './checkedJob.ts'

/** Prefix of the data; its number is the version of the link's form. */
const prefix = 'job1.'
const anyPrefix = /^job(\d{1,6})\./
/** Length limits: a complete job is about 6 kB of text; far below what could stall a phone. */
const longestLink = 24_000
const longestJobText = 200_000
const pushedAtOnce = 64

const damaged = () => new LinkError('damaged', 'This link is cut short or was changed on its way. Ask for it again, or ask for the job as a file.')
const tooLong = () => new LinkError('too-long', 'This link is longer than any job. It was not opened.')

/** FNV-1a, 32 bits: detects a changed character, which may still decompress to something else. */
function checkWord(text: string): string {
  let hash = 0x811c9dc5
  for (const byte of strToU8(text)) hash = Math.imul(hash ^ byte, 0x01000193)
  return (hash >>> 0).toString(36).padStart(7, '0')
}

const toLetters = (bytes: Uint8Array): string => btoa(strFromU8(bytes, true)).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')

function toBytes(letters: string): Uint8Array {
  if (!/^[\w-]+$/.test(letters)) throw damaged()
  try {
    return strToU8(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), true)
  } catch {
    throw damaged()
  }
}

/** Decompresses in small pieces, so that a link that expands to megabytes is stopped early. */
function unpack(bytes: Uint8Array): string {
  const pieces: Uint8Array[] = []
  let length = 0
  const inflate = new Inflate((piece) => {
    length += piece.length
    pieces.push(piece)
  })
  try {
    for (let at = 0; at < bytes.length; at += pushedAtOnce) {
      inflate.push(bytes.subarray(at, at + pushedAtOnce), at + pushedAtOnce >= bytes.length)
      if (length > longestJobText) break
    }
  } catch {
    throw damaged()
  }
  if (length > longestJobText) throw tooLong()
  const whole = new Uint8Array(length)
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return strFromU8(whole)
}

/** Finds text that looks like markup, which has no place in a link from a stranger. */
function markupIn(value: unknown, path: string): string | null {
  if (typeof value === 'string') return /[<>]/.test(value) ? path : null
  if (typeof value !== 'object' || value === null) return null
  for (const [key, inside] of Object.entries(value)) {
    const found = /[<>]/.test(key) ? path : markupIn(inside, path === '' ? key : `${path}.${key}`)
    if (found !== null) return found
  }
  return null
}

/**
 * A whole job as the fragment of a link, without the "#".
 *
 * @throws LinkError where a text holds < or >, or the job is too long for a link
 */
export function jobToFragment(job: unknown): string {
  const field = markupIn(job, '')
  if (field !== null) throw new LinkError('markup', `A link can't carry < or >. Take them out of ${field}, or save the job as a file.`)
  const text = JSON.stringify(job)
  const fragment = `${prefix}${checkWord(text)}.${toLetters(deflateSync(strToU8(text), { level: 9 }))}`
  if (fragment.length > longestLink) throw new LinkError('too-long', 'This job is too long for a link. Save it as a file instead.')
  return fragment
}

/**
 * The job in a link's fragment, as typed and checked by the schema.
 *
 * @throws LinkError for every link that can't be used, with a sentence that says why
 */
export function jobFromFragment(fragment: string): unknown {
  const version = anyPrefix.exec(fragment)?.[1]
  if (version !== undefined && version !== '1')
    throw new LinkError('version', `This link is of form ${Number(version)}; this page reads form 1. Make the link again with the page as it is now.`)
  if (fragment.length > longestLink) throw tooLong()
  const [check = '', data = '', ...rest] = fragment.startsWith(prefix) ? fragment.slice(prefix.length).split('.') : []
  if (data === '' || rest.length > 0) throw damaged()
  const text = unpack(toBytes(data))
  if (checkWord(text) !== check) throw damaged()
  let job: unknown
  try {
    job = JSON.parse(text)
  } catch {
    throw damaged()
  }
  refuseDeepNesting(job, 'This link')
  const field = markupIn(job, '')
  if (field !== null) throw new LinkError('markup', `This link carries < or > in ${field === '' ? 'a name' : field.slice(0, 60)}. It was not opened.`)
  return checkedJob(job, 'This link')
}
