import { requireFiniteResult, requireNotNegative, requireWhole } from '../errors/index.ts'

/** A length of wire put in needs a joint at each end, unless the caller says otherwise. */
const jointsOfAnInsert = 2

/**
 * Tells what slack is left after cutting back, and how long a piece must go in where it is not enough.
 *
 * @equation left = s - c - j; insert = 0 where left is at least w, else c + w - s + n j
 * @symbol s - slackMm - mm - slack before
 * @symbol c - cutBackMm - mm - wire cut off
 * @symbol j - jointConsumesMm - mm - wire that one joint uses up
 * @symbol n - jointsIfInserted - 1 - joints where a piece goes in
 * @symbol w - serviceSlackMm - mm - slack that must stay
 * @symbol left - result - mm - slack left with one joint
 * @domain slackMm: at least 0
 * @domain cutBackMm: at least 0
 * @domain jointConsumesMm: at least 0
 * @domain optional jointsIfInserted: whole at least 1
 * @domain optional serviceSlackMm: at least 0
 * @throws DomainError outside the domain
 * @example
 * slackAfterCutBack({ slackMm: 40, cutBackMm: 70, jointConsumesMm: 10, jointsIfInserted: 2, serviceSlackMm: 20 }) // { leftMm: -40, insertMm: 70, joints: 2 }
 * @source lengths added up
 */
export function slackAfterCutBack(i: {
  readonly slackMm: number
  readonly cutBackMm: number
  readonly jointConsumesMm: number
  readonly jointsIfInserted?: number
  readonly serviceSlackMm?: number
}): { readonly leftMm: number; readonly insertMm: number; readonly joints: number } {
  requireNotNegative('slackMm', i.slackMm)
  requireNotNegative('cutBackMm', i.cutBackMm)
  requireNotNegative('jointConsumesMm', i.jointConsumesMm)
  const joints = i.jointsIfInserted === undefined ? jointsOfAnInsert : requireWhole('jointsIfInserted', i.jointsIfInserted, 1)
  const serviceMm = i.serviceSlackMm === undefined ? 0 : requireNotNegative('serviceSlackMm', i.serviceSlackMm)
  const leftMm = requireFiniteResult('cutBackMm', i.cutBackMm, i.slackMm - i.cutBackMm - i.jointConsumesMm)
  if (leftMm >= serviceMm) return { leftMm, insertMm: 0, joints: 1 }
  return { leftMm, insertMm: requireFiniteResult('cutBackMm', i.cutBackMm, i.cutBackMm + serviceMm - i.slackMm + joints * i.jointConsumesMm), joints }
}
