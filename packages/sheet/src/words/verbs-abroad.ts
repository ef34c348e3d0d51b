/**
 * What makers who sew in German call the verbs, by the stems that it is told from: `kürzen`, `gekürzt` and `Saum kürzen`
 * hold `kürz`. The first whose stems all stand in what was written is meant, so that the longer come first.
 */
const german: readonly (readonly [stems: string, verb: string])[] = [
  ['abnäher schließ', 'close dart'],
  ['abnäher verleg', 'move dart'],
  ['abnäher öffn', 'open dart'],
  ['abnäher aufteil', 'share dart'],
  ['passe abschneid', 'cut off band'],
  ['teile verbind', 'join pieces'],
  ['naht verleg', 'move seam'],
  ['naht verschieb', 'move seam'],
  ['schlitz', 'leave slit'],
  ['halsausschnitt', 'recut neckline'],
  ['ausschnitt', 'recut neckline'],
  ['armloch', 'recut armhole'],
  ['nahtzugabe', 'set allowance'],
  ['zugabe', 'set allowance'],
  ['knips', 'add notches'],
  ['passzeichen', 'add notches'],
  ['bund', 'draft waistband'],
  ['bündchen', 'draft band'],
  ['manschette', 'draft cuff'],
  ['kragen', 'draft collar'],
  ['kapuze', 'draft hood'],
  ['futter', 'draft lining'],
  ['beleg', 'draft facing'],
  ['einfass', 'draft binding'],
  ['schrägband', 'draft binding'],
  ['einlage', 'draft interfacing'],
  ['tunnel', 'draft casing'],
  ['tasche', 'draft patch pocket'],
  ['kürz', 'shorten'],
  ['verlänger', 'lengthen'],
  ['länger', 'lengthen'],
  ['enger', 'take in'],
  ['abnehm', 'take in'],
  ['weiter', 'let out'],
  ['auslass', 'let out'],
  ['spreiz', 'spread'],
  ['ausstell', 'spread'],
  ['aufschneid', 'slash'],
  ['auseinanderschneid', 'divide'],
  ['teilen', 'divide'],
  ['spiegel', 'unfold'],
  ['auffalt', 'unfold'],
  ['aufklapp', 'unfold'],
  ['entfern', 'remove piece'],
  ['glätt', 'true'],
  ['begradig', 'true'],
  ['ausgleich', 'true'],
];

/** The verb that is called so in another tongue than the sheet's; none where it is no such word. */
export function verbAbroad(written: string, verbs: readonly string[]): string | undefined {
  const text = written
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .slice(0, longestRead);
  const plain = spelledOut(text);
  const meant = german.find(([stems]) =>
    stems.split(' ').every(stem => text.includes(stem) || plain.includes(spelledOut(stem))),
  );
  return meant && verbs.includes(meant[1]) ? meant[1] : undefined;
}
const longestRead = 40;

/** `kuerzen` is `kürzen`: both as they are written without umlauts. */
const spelledOut = (text: string): string =>
  text.replace(/ä/g, 'ae').replace(/ö/g, 'oe').replace(/ü/g, 'ue').replace(/ß/g, 'ss');
