export { type QuestionFile, readQuestion } from './readQuestion.ts'
