// What the tests use of pdfkit, which brings no types of its own.
declare module 'pdfkit' {
  export default class PDFDocument {
    constructor(options: { readonly autoFirstPage: boolean });
    on(event: 'data', listener: (part: Uint8Array) => void): this;
    on(event: 'end', listener: (value?: unknown) => void): this;
    addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): this;
    lineWidth(points: number): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    closePath(): this;
    stroke(): this;
    rect(x: number, y: number, width: number, height: number): this;
    clip(): this;
    translate(x: number, y: number): this;
    save(): this;
    restore(): this;
    fontSize(points: number): this;
    text(text: string, x: number, y: number, options: { readonly lineBreak: boolean }): this;
    end(): void;
  }
}
