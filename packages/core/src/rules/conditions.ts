import type { RuleCondition } from './practiceRule.ts'

// The conditions that many rules share, under the words of the trade.

export const onSmallCraft: RuleCondition = { field: 'rules', op: '=', values: ['small-craft'] }
export const onAircraft: RuleCondition = { field: 'rules', op: '=', values: ['aircraft'] }
export const onRoadVehicle: RuleCondition = { field: 'rules', op: '=', values: ['road-vehicle'] }
export const fuseGiven: RuleCondition = { field: 'fuse', op: '=', values: ['given'] }
export const terminalGiven: RuleCondition = { field: 'terminal', op: '=', values: ['given'] }
export const whenSoldered: RuleCondition = { field: 'method', op: '=', values: ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve'] }
export const whenSolderedByHand: RuleCondition = { field: 'method', op: '=', values: ['soldered-lap', 'soldered-lineman-splice'] }
export const whenCrimped: RuleCondition = {
  field: 'method',
  op: '=',
  values: ['crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'new-crimped-terminal'],
}
export const whenSleeved: RuleCondition = { field: 'sleeve', op: '=', values: ['any'] }
export const inTheWet: RuleCondition = { field: 'location', op: '=', values: ['damp', 'splash', 'submerged'] }
export const withIron: RuleCondition = { field: 'tool', op: '=', values: ['iron'] }
export const dropRead: RuleCondition = { field: 'reading', op: '=', values: ['drop'] }
export const atStripping: RuleCondition = { field: 'step', op: '=', values: ['stripping'] }
export const atHeating: RuleCondition = { field: 'step', op: '=', values: ['heating'] }
export const withInsertedLength: RuleCondition = { field: 'situation', op: '=', values: ['inserted-length'] }
export const betweenUnlikeMetals: RuleCondition = { field: 'situation', op: '=', values: ['unlike-metals'] }
export const upTo16V: RuleCondition = { field: 'supplyV', op: '<=', values: [16] }
