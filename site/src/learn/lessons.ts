import type { Lesson } from './lesson/lesson.ts'
import { overlapLength } from './overlapLength/lesson.ts'

/** Every worked example, in the order of the list. */
export const lessons: readonly Lesson[] = [overlapLength]
