import { edgeNames } from '../outline.js';
import type { Pattern } from '../types.js';

/**
 * What names tell of a garment's use, in the languages that patterns are commonly named in. A guess, used for cautions
 * alone: one caution too many does no harm.
 */
const usesByName = {
  child: words(
    'child',
    'children',
    'baby',
    'infant',
    'toddler',
    'boys?',
    'girls?',
    'kids?',
    'kind',
    'kinder',
    'säugling',
    'enfant',
    'bébé',
    'fille',
    'garçon',
    'niñ[oa]s?',
    'bebé',
    'bambin[oai]',
    'neonato',
    'kindje',
    'barn',
  ),
  sleepwear: words(
    'pyjamas?',
    'pajamas?',
    'night(?:gown|shirt|dress|wear)',
    'sleepwear',
    'schlafanzug',
    'nachthemd',
    'pyjamas?',
    'chemise de nuit',
    'camisón',
    'pijama',
    'pigiama',
    'camicia da notte',
    'nachtjapon',
  ),
  cords: words(
    'cords?',
    'drawstrings?',
    'ties?',
    'casing',
    'hood',
    'kordel(?:zug)?',
    'tunnelzug',
    'tunnel',
    'bindebänder',
    'kapuze',
    'cordon',
    'coulisse',
    'capuche',
    'cordón',
    'capucha',
    'cappuccio',
    'koord',
    'capuchon',
  ),
} as const;

/** Whole words, or words that a compound ends or begins with. */
function words(...list: readonly string[]): RegExp {
  return new RegExp(`(?<!\\p{L})(?:${list.join('|')})(?!\\p{L})`, 'iu');
}

/** Whether the pattern's name, or that of a piece, its title or an edge, tells a use. */
export const isNamedFor = (pattern: Pattern, use: keyof typeof usesByName): boolean => {
  const tells = (name: string) => usesByName[use].test(name);
  return (
    tells(pattern.name) ||
    pattern.pieces.some(p => tells(p.name) || tells(p.title) || edgeNames(p).some(tells))
  );
};
