import { testRandomJobs } from '../../random/randomJobs.ts'

testRandomJobs(3)
