import { frozen } from '../errors/inner.ts'
import type { MethodName } from './methodContext.ts'

// The groups of methods that rules name together.

export const solderedByHand: readonly MethodName[] = /* @__PURE__ */ frozen(['soldered-lap', 'soldered-lineman-splice'])
export const soldered: readonly MethodName[] = /* @__PURE__ */ frozen(['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve'])
export const crimped: readonly MethodName[] = /* @__PURE__ */ frozen(['crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'new-crimped-terminal'])
export const splices: readonly MethodName[] = /* @__PURE__ */ frozen([
  'soldered-lap',
  'soldered-lineman-splice',
  'crimped-butt-splice',
  'crimped-and-sealed-butt-splice',
  'solder-sleeve',
])
export const everyMethod: readonly MethodName[] = /* @__PURE__ */ frozen([
  'soldered-lap',
  'soldered-lineman-splice',
  'crimped-butt-splice',
  'crimped-and-sealed-butt-splice',
  'solder-sleeve',
  'new-crimped-terminal',
  'replace-the-run',
])
