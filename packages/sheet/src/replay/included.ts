/** Another sheet's text by its path as written, and the file that it is written in; undefined where there is none. */
export type Included = (
  path: string,
  from: string,
) => { readonly file: string; readonly text: string } | undefined;
