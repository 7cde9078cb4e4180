/** A media type with its parameters (RFC 9110, 8.3.1); what does not look like one is just bytes. */
const form = /^[\w!#$&^.+-]+\/[\w!#$&^.+-]+(\s*;\s*[\w!#$&^.+-]+=("[^"\\]*"|[\w!#$&^.+-]+))*$/

/** The media type a request names, or that of plain bytes. */
export function mediaTypeOf(told: string | undefined): string {
  return told !== undefined && form.test(told) ? told : 'application/octet-stream'
}
