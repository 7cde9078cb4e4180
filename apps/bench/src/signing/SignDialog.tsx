import { directionOf, type Language } from '@shearline/jobfile'
import { type FormEvent, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { sealAtRest } from '../photos/at-rest.ts'
import { sha256Of } from '../photos/sha256.ts'
import type { Draft } from '../sync/write.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { Pad } from './Pad.tsx'
import { bytesOf, writeSignature } from './signature-file.ts'
import css from './signing.module.css'
import { drawnLength, leastDrawn, type PadPoint, strokePath } from './strokes.ts'

export interface SignWish {
  readonly purpose: 'consent' | 'handover'
  /** Every word that is signed, line by line. */
  readonly shown: string
  /** The language of those words, which is the customer's and need not be the bench's. */
  readonly language: Language
  /** Who is expected to sign. */
  readonly signer: string
  /** The fact that is signed for; `beside` may write it. */
  readonly fact: (signer: string) => { readonly id: string; readonly beside: readonly Draft[] }
  /** Earlier signatures this one takes the place of. */
  readonly replaces: readonly string[]
}

/** Shows the words, takes the signature under them, and keeps both together. */
export default function SignDialog({
  wish,
  onClose,
}: {
  readonly wish: SignWish
  readonly onClose: () => void
}) {
  const { record } = useDesk()
  // What is signed is what stood here when the dialog opened, whatever arrives meanwhile.
  const [{ shown, language, purpose, fact, replaces }] = useState(wish)
  const [signer, setSigner] = useState(wish.signer)
  const [how, setHow] = useState<'drawn' | 'typed'>('drawn')
  const [strokes, setStrokes] = useState<readonly (readonly PadPoint[])[]>([])
  const [problem, setProblem] = useState('')
  const [busy, setBusy] = useState(false)
  const sign = async (event: FormEvent) => {
    event.preventDefault()
    if (busy) return
    if (how === 'drawn' && drawnLength(strokes) < leastDrawn) return setProblem(t('sign.not-drawn'))
    setBusy(true)
    try {
      const name = signer.trim()
      const mark =
        how === 'drawn'
          ? ({ how, path: strokes.map(strokePath).join('') } as const)
          : ({ how, name } as const)
      const bytes = bytesOf(writeSignature({ signer: name, shown, mark }))
      const sha256 = await sha256Of(bytes)
      const kept = await sealAtRest(bytes, {
        sha256,
        name: t('sign.file'),
        type: 'image/svg+xml',
        sent: false,
      })
      const { id, beside } = fact(name)
      const signature: Draft = {
        kind: 'signature-drawn',
        body: {
          signer: name,
          for: purpose,
          blob: sha256,
          fact: id,
          shown: await sha256Of(bytesOf(shown)),
          how,
          salt: salt(),
        },
      }
      const withdrawn = replaces.map(
        (old): Draft => ({
          kind: 'corrected',
          body: { fact: old, action: 'withdrawn', reason: t('sign.again.reason') },
        }),
      )
      await record([...withdrawn, ...beside, signature], [kept])
      onClose()
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <Dialog title={t(`sign.title.${purpose}`)} onClose={onClose}>
      <form className={formCss.dialogBody} onSubmit={(event) => void sign(event)}>
        <section
          className={css.shown}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: long words scroll and must be reachable by keyboard
          tabIndex={0}
          aria-label={t('sign.shown')}
          lang={language}
          dir={directionOf(language)}
        >
          {shown.split('\n').map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
        <Words
          label={t('sign.signer')}
          hint={t('sign.signer.hint')}
          value={signer}
          onChange={setSigner}
          autoCapitalize="words"
        />
        <Choice
          label={t('sign.how')}
          value={how}
          onChange={setHow}
          options={[
            ['drawn', t('sign.how.drawn')],
            ['typed', t('sign.how.typed')],
          ]}
        />
        {how === 'drawn' ? (
          <Pad
            strokes={strokes}
            onChange={(next) => {
              setStrokes(next)
              setProblem('')
            }}
          />
        ) : (
          <p className={css.typed} aria-live="polite">
            {signer}
          </p>
        )}
        {problem !== '' && (
          <p className={formCss.problem} role="alert">
            {problem}
          </p>
        )}
        <div className={formCss.foot}>
          <button type="submit" className={formCss.submit} disabled={busy}>
            {t(how === 'drawn' ? 'sign.do' : 'sign.do.typed')}
          </button>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('cancel')}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** So that what remains of an erased fact cannot be found out by trying names. */
function salt(): string {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(9))))
}
