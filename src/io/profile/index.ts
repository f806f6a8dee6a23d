export { readProfile } from './readProfile.ts'
