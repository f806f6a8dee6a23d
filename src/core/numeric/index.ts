export { Random, type RandomState, randomFrom } from './random.ts'
