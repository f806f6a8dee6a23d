/** What every answer says: nothing is guessed, nothing is shared with other pages, nothing is told to them. */
export const safeHeaders: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'x-frame-options': 'SAMEORIGIN',
  'permissions-policy': 'camera=(self), microphone=(), geolocation=(), payment=(), usb=()',
}

/** Of answers that are no page: nothing in them may run or be fetched. */
export const dataPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"

/**
 * Of the bench's page. No script and no style that stands in the page runs, but for a style that the kit of controls makes
 * with the nonce of this answer.
 */
export const pagePolicy = (nonce: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "frame-src 'self'",
    "frame-ancestors 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')

/** Of a report: it brings its styles, pictures and letters inside itself, and has no script. The bench may show it in a frame. */
export const reportPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; frame-ancestors 'self'; base-uri 'none'; form-action 'none'"
