import type { RepairJob } from '../job/index.ts'
import { bilgePumpFeed } from './bilgePumpFeed.ts'
import { classroomSet } from './classroomSet.ts'
import { dynamoLamp } from './dynamoLamp.ts'
import { floatSwitchReturn } from './floatSwitchReturn.ts'
import { gardenRailwayFeeder } from './gardenRailwayFeeder.ts'
import { gliderBatteryLead } from './gliderBatteryLead.ts'
import { kilnHeater } from './kilnHeater.ts'
import { kilnThermocouple } from './kilnThermocouple.ts'
import { marketStallFridge } from './marketStallFridge.ts'
import { orchardGate } from './orchardGate.ts'
import { robotMotorLead } from './robotMotorLead.ts'
import { telescopeMount } from './telescopeMount.ts'
import { trailerTailLamp } from './trailerTailLamp.ts'
import { workshopLedStrip } from './workshopLedStrip.ts'

/** Invented jobs to start from; no real place, person or product. */
export const demoJobs: Readonly<Record<string, RepairJob>> = {
  'bilge-pump-feed': bilgePumpFeed,
  'trailer-tail-lamp': trailerTailLamp,
  'market-stall-fridge': marketStallFridge,
  'orchard-gate': orchardGate,
  'robot-motor-lead': robotMotorLead,
  'garden-railway-feeder': gardenRailwayFeeder,
  'float-switch-return': floatSwitchReturn,
  'telescope-mount': telescopeMount,
  'workshop-led-strip': workshopLedStrip,
  'glider-battery-lead': gliderBatteryLead,
  'kiln-thermocouple': kilnThermocouple,
  'kiln-heater': kilnHeater,
  'dynamo-lamp': dynamoLamp,
  'classroom-set': classroomSet,
}
