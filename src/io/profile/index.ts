export { type Profile, type ProfileProblemKind, readProfile } from './readProfile.ts'
