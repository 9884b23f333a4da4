import { escapeText } from '../../drawings/svg.ts'

/** One thing to work out. */
export interface SheetTask {
  readonly ask: string
  readonly answer: string
}

/** One case of a worksheet: what is given, and what to work out. */
export interface SheetCase {
  readonly given: string
  readonly tasks: readonly SheetTask[]
}

export interface Sheet {
  readonly seed: number
  readonly title: string
  readonly intro: string
  readonly cases: readonly SheetCase[]
}

export const seeds = { first: 1, last: 9999 } as const

/** What stands before the seed in the fragment of a link. */
const prefix = 'sheet='

/** The seed in a link's fragment; null where there is none that a sheet can have. */
export function seedIn(fragment: string): number | null {
  const text = fragment.replace(/^#/, '')
  if (!text.startsWith(prefix)) return null
  return readSeed(text.slice(prefix.length))
}

/** A seed as typed: a whole number in the range. */
export function readSeed(text: string): number | null {
  if (!/^\d{1,4}$/.test(text.trim())) return null
  const seed = Number(text)
  return seed >= seeds.first && seed <= seeds.last ? seed : null
}

export const seedFragment = (seed: number): string => `#${prefix}${seed}`

function page(sheet: Sheet, answers: boolean): string {
  const cases = sheet.cases.map((item) => {
    const tasks = item.tasks.map(
      (task) =>
        `<tr><th scope="row">${escapeText(task.ask)}</th><td>${answers ? escapeText(task.answer) : '<span class="blank" role="img" aria-label="room for your answer"></span>'}</td></tr>`,
    )
    return `<li><p>${escapeText(item.given)}</p><table><tbody>${tasks.join('')}</tbody></table></li>`
  })
  const heading = `${sheet.title}: ${answers ? 'answers' : 'worksheet'} ${sheet.seed}`
  return [
    `<section class="sheet" data-sheet="${answers ? 'answers' : 'tasks'}" aria-label="${escapeText(heading)}">`,
    `<h3>${escapeText(heading)}</h3>`,
    answers ? '' : `<p class="write-in">Name <span class="blank"></span> Date <span class="blank"></span></p><p>${escapeText(sheet.intro)}</p>`,
    `<ol>${cases.join('')}</ol>`,
    '</section>',
  ].join('')
}

/** The worksheet and, on a page of its own, its answers; the same for the same seed, at build and on the page. */
export const sheetMarkup = (sheet: Sheet): { readonly tasks: string; readonly answers: string } => ({ tasks: page(sheet, false), answers: page(sheet, true) })
