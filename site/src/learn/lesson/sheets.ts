import { escapeText } from '../../drawings/svg.ts'
import { streamOf } from '../random.ts'
import { figures, tied } from './say.ts'

/** A common wrong result of a pupil, its cause, and the marks it still earns. */
export interface UsualResult {
  readonly value: number
  readonly says: string
  readonly marks: number
}

/** One task: two marks, one for the method and one for the value. */
export interface SheetTask {
  readonly ask: string
  readonly unit: string
  readonly answer: number
  /** The rule in words, for the guided sheet. */
  readonly box: string
  readonly usual: readonly UsualResult[]
}

export interface Problem {
  readonly given: string
  readonly tasks: readonly SheetTask[]
}

/** A guided, B standard, C with a trap in its units and one question that asks why. */
export const forms = ['A', 'B', 'C'] as const
export type Form = (typeof forms)[number]

/** The sheets of a lesson: a generator of problems, and a question about reasons. */
export interface Sheets {
  readonly title: string
  problem(stream: () => number, form: Form): Problem
  readonly trap: string
  readonly why: { readonly ask: string; readonly points: readonly string[] }
}

export interface Sheet {
  readonly code: string
  readonly lesson: number
  readonly form: Form
  readonly title: string
  readonly problems: readonly Problem[]
  readonly trap?: string
  readonly why?: Sheets['why']
}

export const seeds = { first: 1, last: 9999 } as const
export const taskMarks = 2

const formNames: Readonly<Record<Form, string>> = { A: 'guided', B: 'standard', C: 'units and reasons' }
const problemsOn: Readonly<Record<Form, number>> = { A: 1, B: 2, C: 1 }
/** Offset between forms, so that no two sheets share random numbers. */
const formStride = 10_000
const lessonStride = 100_000

export const codeOf = (lesson: number, form: Form, seed: number): string => `${lesson}${form}-${String(seed).padStart(4, '0')}`

/** Draws for one sheet, after which problems with a common answer are let pass. */
const mostDraws = 200
/** Whether a pupil could copy an answer from one problem to the other. */
const sharesAnswer = (a: Problem, b: Problem): boolean => a.tasks.some(({ answer }, index) => answer === b.tasks[index]?.answer)

/** The sheet of a code, always the same. No two problems on it share an answer. */
export function makeSheet(sheets: Sheets, lesson: number, form: Form, seed: number): Sheet {
  const stream = streamOf(lesson * lessonStride + forms.indexOf(form) * formStride + seed)
  const problems: Problem[] = []
  for (let draw = 0; problems.length < problemsOn[form]; draw++) {
    const drawn = sheets.problem(stream, form)
    if (draw >= mostDraws || !problems.some((earlier) => sharesAnswer(earlier, drawn))) problems.push(drawn)
  }
  const asks = form === 'C' ? { trap: sheets.trap, why: sheets.why } : {}
  return { code: codeOf(lesson, form, seed), lesson, form, title: `${sheets.title}, sheet ${form}: ${formNames[form]}`, problems, ...asks }
}

/** Parses a code such as 1B-0421, or its number alone; otherwise says what is wrong. */
export function readCode(text: string, lesson: number): { readonly seed: number } | { readonly said: string } {
  const typed = text.trim().toUpperCase()
  const [, own, form, digits = ''] = /^(?:(\d{1,2})([ABC])-?)?(\d{1,4})$/.exec(typed) ?? []
  const seed = Number(digits)
  const read = typed === '' ? 'nothing' : `“${text.trim().slice(0, 20)}”`
  const allowed = `Allowed: the code printed on a sheet, or its number from ${seeds.first} to ${seeds.last}. For example: ${codeOf(lesson, 'B', 2)}.`
  if (digits === '' || seed < seeds.first || seed > seeds.last) return { said: `Read: ${read}. ${allowed}` }
  if (own !== undefined && Number(own) !== lesson) return { said: `Read: ${read}, sheet ${form} of lesson ${own}. This is lesson ${lesson}. ${allowed}` }
  return { seed }
}

/** Relative tolerance: three digits were asked for, and one step may have been rounded before. */
const tolerance = 0.01
const near = (a: number, b: number): boolean => Math.abs(a - b) <= tolerance * Math.abs(b)

/** Marks a pupil's result: right, a common wrong result with its cause, or unknown. */
export function judge(task: SheetTask, text: string): { readonly marks: number | null; readonly says: string } {
  const value = Number(text.trim().replace(',', '.').replace('−', '-'))
  if (text.trim() === '' || !Number.isFinite(value)) return { marks: null, says: `Type the number alone, in ${task.unit}.` }
  if (near(value, task.answer)) return { marks: taskMarks, says: `Right: ${taskMarks} of ${taskMarks} marks.` }
  const usual = task.usual.find((one) => near(value, one.value))
  if (usual !== undefined) return { marks: usual.marks, says: `${usual.says}: ${usual.marks} of ${taskMarks} marks.` }
  return { marks: null, says: 'Not among the usual results: look at the way; one mark for a right one.' }
}

const words = (text: string): string => escapeText(tied(text))
const blank = '<span class="blank" role="img" aria-label="room for your answer"></span>'
const shown = (value: number, unit: string): string => `${figures(value)}${unit === '' ? '' : ` ${unit}`}`

function taskMarkup(task: SheetTask, form: Form): string {
  const box = form === 'A' ? `<p class="box">${words(task.box)}</p>` : ''
  return `<li><p>${words(task.ask)}</p>${box}<div class="way" role="img" aria-label="room for your way"></div><p class="answer-line">${blank} ${words(task.unit)} <span class="mark-box">of ${taskMarks} marks</span></p></li>`
}

function answerMarkup(task: SheetTask, place: string): string {
  const usual = task.usual.map(({ value, says, marks }) => `<li>${words(`${shown(value, task.unit)}: ${says}, ${marks} of ${taskMarks}`)}</li>`)
  return [
    `<li data-task="${place}"><p>${words(task.ask)}</p>`,
    `<p class="right"><strong>${words(shown(task.answer, task.unit))}</strong>: ${taskMarks} marks, one of them for the way (${words(task.box)}).</p>`,
    usual.length === 0 ? '' : `<ul class="usual">${usual.join('')}</ul>`,
    '</li>',
  ].join('')
}

/** One printed page: a sheet, or its answers. */
export function sheetMarkup(sheet: Sheet, answers: boolean): string {
  const { problems, why, form, code, lesson } = sheet
  const of = (problem: Problem, index: number): string => {
    const tasks = problem.tasks.map((task, at) => (answers ? answerMarkup(task, `${form}-${index}-${at}`) : taskMarkup(task, form)))
    return `<section><p class="problem-given">${words(problem.given)}</p><ol>${tasks.join('')}</ol></section>`
  }
  const total = taskMarks * problems.reduce((sum, { tasks }) => sum + tasks.length, 0) + (why?.points.length ?? 0)
  const points = why?.points.map((point) => `<li>${words(point)}: 1 mark</li>`) ?? []
  const reasons =
    why === undefined
      ? ''
      : `<section><p class="problem-given">Explain why: ${words(why.ask)}</p>${answers ? `<ul>${points.join('')}</ul>` : `<div class="write" role="img" aria-label="room for your reasons"></div><p class="answer-line"><span class="mark-box">of ${points.length} marks</span></p>`}</section>`
  const heading = `${sheet.title}${answers ? ', answers' : ''}`
  return [
    `<article class="sheet" data-sheet="${form}" data-answers="${answers}" aria-label="${words(`${heading}, ${code}`)}">`,
    `<h2>${words(heading)}</h2>`,
    answers
      ? `<p class="sheet-line">Code ${code}. ${total} marks.${sheet.trap === undefined ? '' : ` The trap: ${words(sheet.trap)}`}</p>`
      : `<p class="sheet-line">Name <span class="blank"></span> Date <span class="blank"></span> Code ${code} <span class="mark-box">of ${total} marks</span></p><p>Give three figures.</p>`,
    ...problems.map(of),
    reasons,
    `<p class="sheet-foot">Strandwise, lesson ${lesson}. CC BY-SA 4.0.</p>`,
    '</article>',
  ].join('')
}
