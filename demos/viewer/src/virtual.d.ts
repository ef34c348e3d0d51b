declare module 'virtual:first-view' {
  const first: import('./engine/view.js').FirstView;
  export default first;
}

/** The parser of the PDF reader, to be run where the reader is: nothing of it is called by name. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs';
