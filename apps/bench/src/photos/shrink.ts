/**
 * @module A photo as it is kept: turned upright, scaled down, drawn anew. Only its pixels go over, so that place, time,
 * device and every other note a camera writes beside them stay behind.
 */

/** Longest side, pixels: a plate or a scratch is still read, and twenty photos fit a slow line. Our own choice. */
const longestSide = 1920
const quality = 0.82

/** A photo ready to be kept. */
export interface Shrunk {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly type: 'image/jpeg'
  readonly width: number
  readonly height: number
}

/** Draws a picture anew. Null when this browser cannot read it as a picture. */
export async function shrink(picture: Blob): Promise<Shrunk | null> {
  const whole = await createImageBitmap(picture, { imageOrientation: 'from-image' }).catch(() => null)
  if (whole === null) return null
  const scale = Math.min(1, longestSide / Math.max(whole.width, whole.height))
  const width = Math.max(1, Math.round(whole.width * scale))
  const height = Math.max(1, Math.round(whole.height * scale))
  const drawn = await drawnAnew(whole, width, height)
  whole.close()
  return { bytes: new Uint8Array(await drawn.arrayBuffer()), type: 'image/jpeg', width, height }
}

/** A small version for lists. Null when the bytes are no picture. */
export async function thumbnailOf(picture: Blob, side: number): Promise<Blob | null> {
  const whole = await createImageBitmap(picture).catch(() => null)
  if (whole === null) return null
  const scale = Math.min(1, side / Math.min(whole.width, whole.height))
  const small = await drawnAnew(whole, Math.round(whole.width * scale), Math.round(whole.height * scale))
  whole.close()
  return small
}

async function drawnAnew(picture: ImageBitmap, width: number, height: number): Promise<Blob> {
  const canvas = new OffscreenCanvas(width, height)
  const context = canvas.getContext('2d')
  if (context === null) throw new Error('no canvas')
  context.imageSmoothingQuality = 'high'
  // What is see-through becomes white: JPEG knows no transparency.
  context.fillStyle = 'white'
  context.fillRect(0, 0, width, height)
  context.drawImage(picture, 0, 0, width, height)
  return canvas.convertToBlob({ type: 'image/jpeg', quality })
}
