export { auditColumns, type RowError } from './auditFields.ts'
export { auditCsv, auditList } from './auditList.ts'
export { type AuditResult, type AuditRow, auditJob, auditRow, auditStream, type JudgedRow } from './auditRow.ts'
export { ListError } from './listError.ts'
