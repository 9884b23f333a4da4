import { frozen } from '../errors/inner.ts'
import { ambientIec60364 } from './ambientIec60364.ts'
import { ambientNec } from './ambientNec.ts'
import type { AmbientTable } from './ambientTable.ts'

/**
 * Ambient factors as the wiring codes print them, by code and reference ambient; all follow sqrt((limit - ambient)/(limit - reference)).
 *
 * @source NFPA 70, tables 310.15(B)(1) and (2); IEC 60364-5-52:2009, table B.52.14
 */
export const ambientFactors = /* @__PURE__ */ frozen({ ...ambientNec, ...ambientIec60364 } as const satisfies Readonly<Record<string, AmbientTable>>)
