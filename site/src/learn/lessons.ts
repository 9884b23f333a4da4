import type { Lesson } from './lesson/lesson.ts'

/** Every folder of `lessons/` holds one lesson. */
const modules = import.meta.glob<{ readonly lesson: Lesson }>('./lessons/*/lesson.ts', { eager: true })

/** Every lesson, in the order of its number. */
export const lessons: readonly Lesson[] = Object.values(modules)
  .map(({ lesson }) => lesson)
  .sort((a, b) => a.number - b.number)
