import { useEffect, useRef, useState } from 'react'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Words, type WordsProps } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import css from './capture.module.css'
import { type Listening, listen, speechOffered, speechStaysHere } from './speech.ts'

/** A line of words that can be spoken where the browser offers it. What was understood stands in the line, to be mended. */
export function SpokenWords(props: WordsProps) {
  const [listening, setListening] = useState<Listening | null>(null)
  const [asking, setAsking] = useState(false)
  const [problem, setProblem] = useState('')
  const before = useRef('')
  useEffect(() => () => listening?.drop(), [listening])
  if (!speechOffered()) return <Words {...props} />
  const start = (here: boolean) => {
    setAsking(false)
    setProblem('')
    before.current = props.value.trim()
    setListening(
      listen(
        here,
        (words) => props.onChange(before.current === '' ? words : `${before.current} ${words}`),
        (why) => {
          setListening(null)
          if (why !== 'done') setProblem(t(why === 'refused' ? 'speech.refused' : 'speech.failed'))
        },
      ),
    )
  }
  const ask = async () => {
    if (await speechStaysHere()) start(true)
    else setAsking(true)
  }
  return (
    <div className={css.spoken}>
      <Words {...props} />
      <div className={formCss.foot}>
        <button
          type="button"
          className={listening === null ? formCss.plain : `${formCss.plain} ${css.hearing}`}
          aria-label={t(listening === null ? 'speech.start-named' : 'speech.stop-named', {
            label: props.label,
          })}
          onClick={() => (listening === null ? void ask() : listening.stop())}
        >
          {t(listening === null ? 'speech.start' : 'speech.stop')}
        </button>
        <span role="status" className={formCss.hint}>
          {listening === null ? problem : t('speech.hearing')}
        </span>
      </div>
      {asking && (
        <Dialog title={t('speech.agree.title')} onClose={() => setAsking(false)}>
          <p>{t('speech.agree')}</p>
          <div className={formCss.foot}>
            <button type="button" className={formCss.submit} onClick={() => setAsking(false)}>
              {t('speech.agree.no')}
            </button>
            <button type="button" className={formCss.plain} onClick={() => start(false)}>
              {t('speech.agree.yes')}
            </button>
          </div>
        </Dialog>
      )}
    </div>
  )
}
