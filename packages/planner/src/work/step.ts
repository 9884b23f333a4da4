import { type Filling, filled, type PlanStep, type PlanValue, type Units } from '../facts/inner.ts'
import { type StepCode, stepWords } from './stepWords.ts'

/** One step in the job's units; its values are those named in its text, and those in `beside`. */
export function step(units: Units, code: StepCode, filling: Filling = {}, beside: readonly PlanValue[] = []): PlanStep {
  const { text, check } = stepWords[code]
  const named = Object.entries(filling.values ?? {}).flatMap(([name, value]) => (text.includes(`{${name}}`) || check.includes(`{${name}}`) ? [value] : []))
  return { code, text: filled(text, filling, units), values: [...named, ...beside], check: filled(check, filling, units) }
}
