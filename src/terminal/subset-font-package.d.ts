/** The package ships no types: what subset-font.ts uses of it. */
declare module 'subset-font' {
  interface Options {
    readonly targetFormat: 'sfnt' | 'woff2';
    readonly keepFeatures?: readonly string[];
    readonly noHinting?: boolean;
  }
  function subsetFont(font: Uint8Array, signs: string, options: Options): Promise<Buffer>;
  export = subsetFont;
}
