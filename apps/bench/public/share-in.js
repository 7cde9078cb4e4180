/*
 * Part of the service worker: takes what another app shares with the installed bench (Web Share Target, W3C), keeps it
 * on this device, and opens the page that asks which job it is for. Works without a connection; nothing is sent.
 * The store is read by src/shared/store.ts.
 */
const shareAddress = new URL('share', self.registration.scope).href

/** Larger files are no fault reports; the same limit as for an opened file. Bytes. */
const mostBytes = 32 << 20

self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'POST' || event.request.url !== shareAddress) return
  event.respondWith(
    takeIn(event.request)
      .then(() => '#/shared')
      .catch(() => '#/shared/failed')
      .then((page) => Response.redirect(new URL(`./${page}`, self.registration.scope).href, 303)),
  )
})

async function takeIn(request) {
  const form = await request.formData()
  const at = new Date().toISOString()
  const items = form
    .getAll('reports')
    .filter((file) => typeof file !== 'string' && file.size > 0 && file.size <= mostBytes)
    .map((file) => ({ job: null, name: file.name, text: '', file, at }))
  const words = ['text', 'url']
    .map((name) => form.get(name))
    .filter((one) => typeof one === 'string' && one !== '')
  const text = words.join('\n')
  const title = form.get('title')
  if (text !== '')
    items.push({ job: null, name: typeof title === 'string' ? title : '', text, file: null, at })
  if (items.length === 0) throw new Error('nothing to take')
  const db = await opened()
  await new Promise((resolve, reject) => {
    const writing = db.transaction('items', 'readwrite', { durability: 'strict' })
    for (const item of items) writing.objectStore('items').add(item)
    writing.oncomplete = () => resolve(undefined)
    writing.onabort = () => reject(writing.error)
  })
  db.close()
}

function opened() {
  return new Promise((resolve, reject) => {
    const asking = indexedDB.open('shearline-shared', 1)
    asking.onupgradeneeded = () =>
      asking.result.createObjectStore('items', { keyPath: 'id', autoIncrement: true })
    asking.onsuccess = () => resolve(asking.result)
    asking.onerror = () => reject(asking.error)
  })
}
