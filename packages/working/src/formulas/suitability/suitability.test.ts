import { anodicIndex } from '@strandwise/core/suitability'
import fc from 'fast-check'
import { everyFormulaAgrees, record } from '../agreement.test.ts'
import { suitabilityFormulas } from './suitabilityFormulas.ts'

const metal = fc.constantFrom(...Object.keys(anodicIndex))

everyFormulaAgrees(suitabilityFormulas, { galvanicDifferenceV: record({ metal1: metal, metal2: metal }) })
