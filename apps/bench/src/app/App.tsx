import { lazy, Suspense, useDeferredValue, useEffect, useRef } from 'react'
import { Board } from '../board/Board.tsx'
import { listenLive } from '../sync/live.ts'
import { startSending } from '../sync/outbox.ts'
import { t } from '../words/index.ts'
import css from './app.module.css'
import { Header } from './Header.tsx'
import { Mishap } from './Mishap.tsx'
import { Notices } from './Notices.tsx'
import { holdJob, keepBench } from './renewal.ts'
import { addressOf, type Route, readRoute, useRoute } from './route.ts'

const JobPage = lazy(() => import('../job/JobPage.tsx'))
const NewJob = lazy(() => import('../board/NewJob.tsx'))
const PolicyPage = lazy(() => import('../policy/PolicyPage.tsx'))
const KeepingPage = lazy(() => import('../custody/KeepingPage.tsx'))
const SharedPage = lazy(() => import('../shared/SharedPage.tsx'))
const PracticePage = lazy(() => import('../practice/PracticePage.tsx'))
const DevicePage = lazy(() => import('../device/DevicePage.tsx'))

/** The bench: a header that says what is saved and sent, and one page below it. */
export function App() {
  const asked = useRoute()
  // The page that is left stays until the next one is ready: a tap is answered at once, however large both are.
  const route = useDeferredValue(asked)
  const main = useRef<HTMLElement>(null)
  useEffect(() => {
    keepBench()
    startSending()
    return listenLive(() => {
      const now = readRoute(location.hash)
      return now.page === 'job' ? now.job : null
    })
  }, [])
  const inJob = route.page === 'job' || route.page === 'new'
  useEffect(() => (inJob ? holdJob() : undefined), [inJob])
  const place = addressOf(route)
  const shown = useRef(place)
  useEffect(() => {
    document.title = t(`title.${route.page}`)
    if (shown.current === place) return
    shown.current = place
    main.current?.focus()
    scrollTo(0, 0)
  }, [place, route.page])
  return (
    <>
      <button type="button" className={css.skip} onClick={() => main.current?.focus()}>
        {t('app.skip')}
      </button>
      <Header route={asked} />
      <Notices route={route} />
      <main id="bench-main" className={css.main} ref={main} tabIndex={-1}>
        <Mishap key={place}>
          <Suspense fallback={<p className={css.loading}>{t('app.loading')}</p>}>{pageOf(route)}</Suspense>
        </Mishap>
      </main>
    </>
  )
}

function pageOf(route: Route) {
  if (route.page === 'job') return <JobPage key={route.job} job={route.job} />
  if (route.page === 'new') return <NewJob />
  if (route.page === 'shared') return <SharedPage failed={route.failed} />
  if (route.page === 'practice') return <PracticePage exercise={route.exercise} />
  if (route.page === 'device') return <DevicePage />
  if (route.page === 'rules') return <PolicyPage />
  if (route.page === 'keeping') return <KeepingPage />
  return <Board />
}
