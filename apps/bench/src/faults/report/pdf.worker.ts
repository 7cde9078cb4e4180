/** @module Takes PDFs apart away from the page. The library sets itself up when it is loaded in a worker. */
import 'pdfjs-dist/legacy/build/pdf.worker.mjs'
