export { auditColumns, type RowError } from './auditFields.ts'
export { auditCsv, auditList } from './auditList.ts'
export { type AuditResult, type AuditRow, auditRow, auditStream, type JudgedRow } from './auditRow.ts'
export { ListError } from './listError.ts'
