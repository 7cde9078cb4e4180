import { useEffect, useState } from 'react'

/** Colours of the tokens as a canvas takes them. */
export interface Colours {
  readonly ink: string
  readonly quiet: string
  readonly rule: string
  readonly steel: string
  readonly steelDeep: string
  readonly steelWash: string
  readonly brassDeep: string
  readonly patina: string
}

const tokens: Readonly<Record<keyof Colours, string>> = {
  ink: '--ink',
  quiet: '--quiet',
  rule: '--rule',
  steel: '--steel',
  steelDeep: '--steel-deep',
  steelWash: '--steel-wash',
  brassDeep: '--brass-deep',
  patina: '--patina',
}

/** Reads the tokens as they are where `element` stands; the browser resolves light and dark. */
function coloursAt(element: HTMLElement): Colours {
  const probe = element.ownerDocument.createElement('span')
  element.append(probe)
  const read = (token: string) => {
    probe.style.color = `var(${token})`
    return getComputedStyle(probe).color
  }
  const colours = Object.fromEntries(Object.entries(tokens).map(([name, token]) => [name, read(token)]))
  probe.remove()
  return colours as unknown as Colours
}

/** The colours of an element, read anew when the theme changes. */
export function useColours(element: HTMLElement | null): Colours | null {
  const [colours, setColours] = useState<Colours | null>(null)
  useEffect(() => {
    if (element === null) return
    const read = () => setColours(coloursAt(element))
    read()
    const watched = ['(prefers-color-scheme: dark)', '(prefers-contrast: more)'].map((query) =>
      matchMedia(query),
    )
    for (const media of watched) media.addEventListener('change', read)
    const root = new MutationObserver(read)
    root.observe(document.documentElement, { attributeFilter: ['data-theme'] })
    return () => {
      for (const media of watched) media.removeEventListener('change', read)
      root.disconnect()
    }
  }, [element])
  return colours
}
