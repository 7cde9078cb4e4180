/** The age library, loaded when a secret is sealed or opened: most of what people do needs no cipher. */
export function age(): Promise<typeof import('age-encryption')> {
  return import('age-encryption')
}
