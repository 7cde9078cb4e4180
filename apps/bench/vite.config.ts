import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

/** The engines declare no side effects: a page that uses one function of them must not carry the rest. */
const engines = /[\\/]packages[\\/](bus|keywork|jobfile)[\\/]src[\\/]/

const treeshake = { moduleSideEffects: (id: string) => !engines.test(id) }

/**
 * Everything the bench is built from goes into the browser's cache when it is first opened: pages, lazy parts,
 * workers, WebAssembly, fonts. Nothing else ever does: no route caches what the server answers, so no record and
 * no secret can land there. See docs/decisions/0013.
 */
const pwa = VitePWA({
  strategies: 'generateSW',
  registerType: 'prompt',
  injectRegister: false,
  // public/manifest.webmanifest and the icons beside it are drawn by hand.
  manifest: false,
  workbox: {
    globPatterns: ['**/*.{html,js,mjs,css,svg,png,webmanifest,woff2,ttf,wasm,icc,bcmap,gz}'],
    globIgnores: ['types/**', 'share-in.js'],
    maximumFileSizeToCacheInBytes: 32 * 1024 * 1024,
    // Names in assets/ change with their content.
    dontCacheBustURLsMatching: /^assets\//,
    navigateFallback: 'index.html',
    navigateFallbackDenylist: [/^\/api\//, /^\/verify\.html$/],
    cleanupOutdatedCaches: true,
    // A page that was opened for the first time needs no second visit; a newer version waits to be asked for.
    clientsClaim: true,
    skipWaiting: false,
    // Takes what other apps share with the installed bench.
    importScripts: ['share-in.js'],
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
})

export default defineConfig({
  base: './',
  plugins: [react(), pwa],
  resolve: { conditions: ['@shearline/source', 'module', 'browser', 'development|production'] },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: {
    outDir: 'dist',
    target: 'es2023',
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    // A strict content policy allows no data: addresses for code, styles or fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { treeshake },
  },
  server: { proxy: { '/api': 'http://127.0.0.1:4700' } },
})
