import { frozen } from '../errors/inner.ts'
import type { RuleCondition } from './practiceRule.ts'

// Conditions that many rules share, named in the trade's words.

export const onSmallCraft: RuleCondition = /* @__PURE__ */ frozen({ field: 'rules', op: '=', values: ['small-craft'] })
export const onAircraft: RuleCondition = /* @__PURE__ */ frozen({ field: 'rules', op: '=', values: ['aircraft'] })
export const onRoadVehicle: RuleCondition = /* @__PURE__ */ frozen({ field: 'rules', op: '=', values: ['road-vehicle'] })
export const fuseGiven: RuleCondition = /* @__PURE__ */ frozen({ field: 'fuse', op: '=', values: ['given'] })
export const terminalGiven: RuleCondition = /* @__PURE__ */ frozen({ field: 'terminal', op: '=', values: ['given'] })
export const whenSoldered: RuleCondition = /* @__PURE__ */ frozen({
  field: 'method',
  op: '=',
  values: ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve'],
})
export const whenSolderedByHand: RuleCondition = /* @__PURE__ */ frozen({ field: 'method', op: '=', values: ['soldered-lap', 'soldered-lineman-splice'] })
export const whenCrimped: RuleCondition = /* @__PURE__ */ frozen({
  field: 'method',
  op: '=',
  values: ['crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'new-crimped-terminal'],
})
export const whenSleeved: RuleCondition = /* @__PURE__ */ frozen({ field: 'sleeve', op: '=', values: ['any'] })
export const inTheWet: RuleCondition = /* @__PURE__ */ frozen({ field: 'location', op: '=', values: ['damp', 'splash', 'submerged'] })
export const withIron: RuleCondition = /* @__PURE__ */ frozen({ field: 'tool', op: '=', values: ['iron'] })
export const dropRead: RuleCondition = /* @__PURE__ */ frozen({ field: 'reading', op: '=', values: ['drop'] })
export const atStripping: RuleCondition = /* @__PURE__ */ frozen({ field: 'step', op: '=', values: ['stripping'] })
export const atHeating: RuleCondition = /* @__PURE__ */ frozen({ field: 'step', op: '=', values: ['heating'] })
export const withInsertedLength: RuleCondition = /* @__PURE__ */ frozen({ field: 'situation', op: '=', values: ['inserted-length'] })
export const betweenUnlikeMetals: RuleCondition = /* @__PURE__ */ frozen({ field: 'situation', op: '=', values: ['unlike-metals'] })
export const upTo16V: RuleCondition = /* @__PURE__ */ frozen({ field: 'supplyV', op: '<=', values: [16] })
