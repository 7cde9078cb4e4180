/** @module The verify page: takes a file by drop or picker, proves it here, and shows what holds. */
import { canCheckSignatures, proveFile } from './checking.ts'
import { element } from './dom.ts'
import { languageSelect } from './language-select.ts'
import { result } from './show.ts'
import { firstSpoken } from './words/languages.ts'
import { speak, t } from './words.ts'

type View = () => readonly Node[]

const place = element('main')
const head = element('header')
const foot = element('footer')
let stopping = new AbortController()
let view: View = start

function start(): readonly Node[] {
  const picker = element('input', {
    type: 'file',
    id: 'file',
    accept: '.pdf,.zip,.json,application/pdf,application/zip,application/json',
  })
  picker.addEventListener('change', () => {
    const [file] = picker.files ?? []
    if (file !== undefined) void check(file)
  })
  return [
    element(
      'div',
      { id: 'start' },
      element('h1', { tabindex: '-1' }, t('page.title')),
      element('p', {}, t('page.lead')),
      element(
        'div',
        { class: 'drop' },
        element('p', { class: 'big' }, t('page.drop')),
        picker,
        element('label', { for: 'file', class: 'button' }, t('page.choose')),
        element('p', { class: 'quiet' }, t('page.kinds')),
      ),
    ),
  ]
}

function show(next: View): void {
  view = next
  place.replaceChildren(...view())
  place.querySelector<HTMLElement>('h1')?.focus()
  scrollTo(0, 0)
}

/** Says again in the language spoken now what the page shows; what was unfolded stays so. */
function sayAgain(): void {
  document.title = t('page.title')
  head.replaceChildren(languageSelect(sayAgain))
  foot.replaceChildren(t('page.foot'))
  const unfolded = [...place.querySelectorAll('details')].map(({ open }) => open)
  place.replaceChildren(...view())
  for (const [index, details] of place.querySelectorAll('details').entries())
    details.open = unfolded[index] ?? false
}

async function check(file: File): Promise<void> {
  stopping.abort()
  const mine = new AbortController()
  stopping = mine
  let furthest = 0
  const progress = () => {
    const share = file.size === 0 ? 100 : Math.floor((furthest * 100) / file.size)
    return t('busy.read', { name: file.name, share })
  }
  let words = element('p')
  const read = (to: number) => {
    furthest = Math.max(furthest, to)
    words.textContent = progress()
  }
  show(() => {
    words = element('p', { role: 'status', id: 'busy' }, progress())
    const stop = element('button', { type: 'button', class: 'button' }, t('busy.stop'))
    stop.addEventListener('click', () => mine.abort())
    return [element('div', { class: 'sheet' }, words, stop)]
  })
  // Lets the browser paint before the work begins.
  await new Promise((painted) => setTimeout(painted, 20))
  try {
    const given = await proveFile(file, read, mine.signal)
    const entered = { fingerprint: '' }
    if (stopping === mine) show(() => [result(given, file, entered), another()])
  } catch (error) {
    if (stopping !== mine) return
    const why = error instanceof Error ? error.message : String(error)
    const what = () => (mine.signal.aborted ? t('busy.stopped') : t('busy.failed', { why }))
    show(() => [element('p', { role: 'alert', class: 'sheet' }, what()), another()])
  }
}

function another(): HTMLElement {
  const button = element('button', { type: 'button', class: 'button' }, t('page.another'))
  button.addEventListener('click', () => show(start))
  return button
}

addEventListener('dragover', (event) => {
  event.preventDefault()
  document.body.classList.add('over')
})
addEventListener('dragleave', () => document.body.classList.remove('over'))
addEventListener('drop', (event) => {
  event.preventDefault()
  document.body.classList.remove('over')
  const file = event.dataTransfer?.files[0]
  if (file !== undefined) void check(file)
})

speak(firstSpoken(navigator.languages))
document.body.append(head, place, foot)
sayAgain()
show(start)
if (!(await canCheckSignatures()))
  show(() => [element('p', { role: 'alert', class: 'sheet' }, t('page.no-signatures'))])
