export type { RowError } from './auditFields.ts'
export { type AuditResult, type AuditRow, auditRow, auditStream, type JudgedRow } from './auditRow.ts'
