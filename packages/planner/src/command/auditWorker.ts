import { parentPort, workerData } from 'node:worker_threads'
import { auditBatch, type Batch, type ListSetup } from '../audit/inner.ts'

/** Worker thread of the audit: receives a batch, returns its text and counts. */
parentPort?.on('message', (batch: Batch) => parentPort?.postMessage(auditBatch(batch, workerData as ListSetup)))
