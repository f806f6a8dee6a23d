/**
 * Text for a cell that a spreadsheet will not run as a formula: one that begins with =, +, -, @, a tab or a line end, or
 * their full-width forms, gets an apostrophe before it (OWASP, CSV Injection). Numbers are not texts and stay as they are.
 */
export const defused = (text: string): string => (/^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text)
