import * as parser from 'pdfjs-dist/legacy/build/pdf.worker.mjs';

// The engine is a worker already: the parser runs within it, where the reader looks for it first.
(globalThis as Record<string, unknown>).pdfjsWorker = parser;

export { readPdf } from 'paperhinge/read-pdf';
