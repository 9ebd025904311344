/**
 * Cuts STIX Two Math down to the signs a course in electrical work needs, keeping its MATH table, and writes
 * the result with its licence to public/fonts. Run it after adding a sign that lessons did not use before:
 * `node src/terminal/subset-font.ts`.
 */
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import subsetFont from 'subset-font';

const root = new URL('../../', import.meta.url);
const source = new URL('node_modules/@fontsource/stix-two-math/', root);
const target = new URL('public/fonts/', root);

const range = (from: number, to: number): string =>
  String.fromCodePoint(...Array.from({ length: to - from + 1 }, (_, i) => from + i));

const signs = [
  range(0x20, 0x7e),
  ' ·×÷±−√∑∫∂∆Δ∞≈≠≤≥≪≫∝∠°′″‖|⟨⟩→⇒½²³µ…',
  'αβγδεηθλμπρσστφϕψωΦΨΩΣΘΛ',
  // Italic letters, as MathML sets single-letter identifiers
  range(0x1d434, 0x1d454),
  range(0x1d456, 0x1d467),
  'ℎ𝜂𝜃𝜆𝜇𝜋𝜌𝜎𝜏𝜑𝜙𝜔𝛼𝛽𝛥𝛺',
].join('');

const font = await readFile(new URL('files/stix-two-math-latin-400-normal.woff2', source));
// ssty gives the smaller shapes of raised and lowered letters; the MATH table is kept by itself.
const features = ['ssty', 'kern', 'mark', 'mkmk', 'ccmp'];
const subset = await subsetFont(font, signs, {
  targetFormat: 'woff2',
  keepFeatures: features,
  noHinting: true,
});
const plain = await subsetFont(font, signs, {
  targetFormat: 'sfnt',
  keepFeatures: features,
  noHinting: true,
});
if (!plain.subarray(0, 600).includes('MATH')) throw new Error('the subset lost its MATH table');
await mkdir(target, { recursive: true });
await writeFile(new URL('stix-two-math-subset.woff2', target), subset);
await copyFile(new URL('LICENSE', source), new URL('stix-two-math-LICENSE.txt', target));
console.log(`stix-two-math-subset.woff2: ${(subset.byteLength / 1000).toFixed(1)} kB`);
