export { drawRound, type JudgedRound, judgeRound, type RoundArgs, type RoundSpeed, roundText } from './judgeRound.ts'
