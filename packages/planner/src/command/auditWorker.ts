import { parentPort, workerData } from 'node:worker_threads'
import { auditBatch, type Batch, type ListSetup } from '../audit/inner.ts'

/** A thread of the audit: a batch in, its text and counts out. */
parentPort?.on('message', (batch: Batch) => parentPort?.postMessage(auditBatch(batch, workerData as ListSetup)))
