export { type ScatterWords, scatterText, type ToldScatter, tellScatter } from './tellScatter.ts'
