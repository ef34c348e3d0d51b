import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { FontFiles } from '@paperhinge/print';

const resolve = createRequire(import.meta.url).resolve;
const file = (path: string) => () => readFile(resolve(path));

/**
 * The open fonts that pages are set in, each read only once it is needed: a clear sans for Latin, Greek and Cyrillic;
 * behind it DejaVu for the other alphabets, Arabic and Hebrew among them; and behind that a font with a plain sign for
 * nearly every character there is.
 */
export const fonts: FontFiles = {
  regular: file('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf'),
  bold: file('@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf'),
  fallbacks: [
    file('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
    file('@fontsource/unifontex/files/unifontex-latin-400-normal.woff'),
  ],
};
