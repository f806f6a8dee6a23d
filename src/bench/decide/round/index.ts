export { drawRound, type JudgedRound, judgeRound, type RoundSpeed, roundText } from './judgeRound.ts'
