/**
 * Whether only this very device understands a host name, as `location.hostname` gives it: `localhost` and every name
 * under it (RFC 6761 section 6.3), 127.0.0.0/8 (RFC 1122 section 3.2.1.3) and ::1 (RFC 4291 section 2.5.3).
 */
export function onlyHere(hostname: string): boolean {
  return /(^|\.)localhost\.?$/i.test(hostname) || /^127(\.\d{1,3}){3}$/.test(hostname) || hostname === '[::1]'
}
