import { requireFiniteResult, requireNotNegative, requireWhole } from '../errors/index.ts'
import { slackDefaults } from './routingDefaults.ts'

/**
 * Slack left after cutting back and one joint, and, if that is too little, the length of the piece to insert.
 *
 * leftMm always assumes one joint, so that it shows what is missing. If at least the service slack is left: one joint, nothing inserted.
 *
 * @equation left = s - c - j; insert = 0 where left is at least w, else c + w - s + n j
 * @symbol s - slackMm - mm - slack before the cut
 * @symbol c - cutBackMm - mm - wire that is cut off
 * @symbol j - jointConsumesMm - mm - wire that one joint uses up
 * @symbol n - jointsIfInserted - 1 - joints where a piece goes in
 * @symbol w - serviceSlackMm - mm - slack that must stay
 * @symbol left - result.leftMm - mm - slack left with one joint; below 0 it is missing
 * @symbol insert - result.insertMm - mm - length to put in, as cut
 * @domain slackMm: at least 0
 * @domain cutBackMm: at least 0
 * @domain jointConsumesMm: at least 0
 * @domain optional jointsIfInserted: whole at least 1
 * @domain optional serviceSlackMm: at least 0
 * @throws DomainError outside the domain
 * @example
 * slackAfterCutBack({ slackMm: 40, cutBackMm: 70, jointConsumesMm: 10, jointsIfInserted: 2, serviceSlackMm: 20 }) // { leftMm: -40, insertMm: 70, joints: 2 }
 * @source lengths added up; two joints for a piece put in are common practice
 */
export function slackAfterCutBack(i: {
  readonly slackMm: number
  readonly cutBackMm: number
  readonly jointConsumesMm: number
  readonly jointsIfInserted?: number
  readonly serviceSlackMm?: number
}): { readonly leftMm: number; readonly insertMm: number; readonly joints: number } {
  const s = requireNotNegative('slackMm', i.slackMm)
  const c = requireNotNegative('cutBackMm', i.cutBackMm)
  const j = requireNotNegative('jointConsumesMm', i.jointConsumesMm)
  const n = requireWhole('jointsIfInserted', i.jointsIfInserted ?? slackDefaults.jointsIfInserted, 1)
  const w = requireNotNegative('serviceSlackMm', i.serviceSlackMm ?? slackDefaults.serviceSlackMm)
  const leftMm = requireFiniteResult('cutBackMm', c, s - c - j)
  if (leftMm >= w) return { leftMm, insertMm: 0, joints: 1 }
  return { leftMm, insertMm: requireFiniteResult('cutBackMm', c, c + w - s + n * j), joints: n }
}
