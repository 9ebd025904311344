/** Remainder of each byte: a log of thousands of attempts is summed at every load, bit by bit it would be felt. */
const remainders = Uint32Array.from({ length: 256 }, (_each, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  return crc;
});

/**
 * CRC-32 of a text's UTF-8 bytes, as eight lower-case hexadecimal digits. Finds damage, not forgery.
 *
 * @param text  any text without lone surrogates (JSON.stringify never makes one)
 * @returns eight hexadecimal digits
 * Source: ISO/IEC 13239 frame check (reflected polynomial EDB88320); check value of "123456789" from the catalogue of
 * parametrised CRC algorithms (G. Cook), from memory.
 * Example: checksum('123456789') → 'cbf43926'
 */
export function checksum(text: string): string {
  let crc = 0xffffffff;
  const take = (byte: number): void => {
    // The index is a byte, so the table always has it.
    crc = (crc >>> 8) ^ (remainders[(crc ^ byte) & 0xff] ?? 0);
  };
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (code < 0x80) {
      take(code);
      continue;
    }
    // UTF-8: the lead byte says how many six-bit bytes follow.
    const following = code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
    take(((0xff00 >> (following + 1)) & 0xff) | (code >> (6 * following)));
    for (let left = following - 1; left >= 0; left--) take(0x80 | ((code >> (6 * left)) & 0x3f));
  }
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
