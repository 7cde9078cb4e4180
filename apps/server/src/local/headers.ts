import { createHash } from 'node:crypto'
import type { MiddlewareHandler } from 'hono'
import { secureHeaders } from 'hono/secure-headers'

/**
 * The style elements react-aria adds at run time (touch behaviour of buttons; scrolling behind a dialog). They
 * are allowed by their hash, so that no other inline style is.
 */
const inlineStyles = [
  `@layer {
  [data-react-aria-pressable] {
    touch-action: pan-x pan-y pinch-zoom;
  }
}`,
  `@layer {
  * {
    overscroll-behavior: contain;
  }
}`,
]

const styleHashes = inlineStyles.map(
  (style) => `'sha256-${createHash('sha256').update(style).digest('base64')}'`,
)

/**
 * Security headers of every answer. The content policy allows what the bench is built from and nothing of a
 * third party; WebAssembly may be compiled (signal analysis), text may not be run as script.
 */
export function securityHeaders(): MiddlewareHandler {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'none'"],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      styleSrc: ["'self'", ...styleHashes],
      imgSrc: ["'self'", 'blob:', 'data:'],
      mediaSrc: ["'self'", 'blob:'],
      fontSrc: ["'self'"],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      manifestSrc: ["'self'"],
      frameSrc: ["'self'", 'blob:'],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'none'"],
      frameAncestors: ["'none'"],
    },
    // The camera reads codes and takes photos of keys, the microphone takes dictated notes where the browser offers it,
    // the serial port reads an adapter; nothing else is asked for, and no other site may ask.
    permissionsPolicy: {
      camera: ['self'],
      serial: ['self'],
      microphone: ['self'],
      geolocation: [],
      payment: [],
      usb: [],
      hid: [],
    },
    crossOriginResourcePolicy: 'same-origin',
    crossOriginOpenerPolicy: 'same-origin',
    referrerPolicy: 'no-referrer',
    xFrameOptions: 'DENY',
    // Loopback is plain HTTP: there is no transport to be strict about.
    strictTransportSecurity: false,
    overwrite: false,
  })
}

/** Policy for bytes that came from a device: shown or saved, never run, never able to reach anything. */
export const bytesPolicy = "default-src 'none'; sandbox; frame-ancestors 'none'"

/** Policy for a sealed PDF, which the browser's own viewer shows in a tab or inside our page. */
export const documentPolicy =
  "default-src 'none'; object-src 'self'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'self'"
