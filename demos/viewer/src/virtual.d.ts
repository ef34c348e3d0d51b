declare module 'virtual:first-view' {
  const first: import('./engine/view.js').FirstView;
  export default first;
}
