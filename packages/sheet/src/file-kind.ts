/** What a file may be that is given where another is wanted. */
export type FileKind = 'sheet' | 'drawing' | 'pdf' | 'picture' | 'record' | 'archive' | 'dxf';
