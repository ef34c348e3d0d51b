/** Cells along a side of a target's code, inside its black border of one cell. */
export const codeSide = 6;
/** Wrong cells that are put right: the codes differ in 11 cells or more, however they are turned, so 5 would still do. */
const mostWrong = 3;

/** A target as read: which one, how many of its cells were read wrong, and quarter turns clockwise of its picture. */
export interface TargetRead {
  readonly index: number;
  readonly wrong: number;
  readonly turns: number;
}

/** The cells of a target, row by row; true is white. */
export function codeCells(index: number): readonly boolean[] {
  const word = words[index]!;
  return Array.from({ length: codeSide * codeSide }, (_, i) => {
    const nibble = Number.parseInt(word[i >> 2]!, 16);
    return ((nibble >> (3 - (i & 3))) & 1) === 1;
  });
}

/** The target whose code is nearest to these cells in any quarter turn; undefined if none is near enough. */
export function readCode(cells: readonly boolean[]): TargetRead | undefined {
  let turned = cells;
  let best: TargetRead | undefined;
  for (let turns = 0; turns < 4; turns++) {
    const [high, low] = packed(turned);
    for (let index = 0; index < packedWords.length; index++) {
      const [h, l] = packedWords[index]!;
      const wrong = ones(h ^ high) + ones(l ^ low);
      if (wrong <= mostWrong && (!best || wrong < best.wrong)) best = { index, wrong, turns };
    }
    turned = turnedBack(turned);
  }
  return best;
}

/** The picture turned a quarter anticlockwise. */
const turnedBack = (cells: readonly boolean[]): readonly boolean[] =>
  cells.map((_, i) => {
    const row = Math.floor(i / codeSide),
      column = i % codeSide;
    return cells[column * codeSide + (codeSide - 1 - row)]!;
  });

function packed(cells: readonly boolean[]): readonly [number, number] {
  const half = cells.length / 2;
  const word = (from: number) =>
    cells.slice(from, from + half).reduce((w, cell) => w * 2 + (cell ? 1 : 0), 0);
  return [word(0), word(half)];
}

function ones(value: number): number {
  let v = value - ((value >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return (((v + (v >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

/**
 * 36 cells each in hexadecimal: found by trying random words, each at least 11 cells from every other and from its
 * own quarter turns, with 13 to 23 white cells. Never to be changed: sheets printed years ago must still be read.
 */
const words: readonly string[] = `
369265cb3 e6c38c5d0 05148b15c 7e7531cae 2ba5de65b 397808784 b528a9f0f fc019ca62 13eea5f67
4ed492406 3cc24802d 3359af2f0 6862a8961 05fddf18a 8e3db933b 44e983b78 ef2374816 ad993be4e
53ad3c845 091de5600 cdaf41435 ce7014819 fe796bb41 df213fd5a d784ce186 aa58f6ae5 a38a9c421
23e00d872 08d785146 db70d8a75 3f08d64c0 4a182fd85 7bbd3008b c07f87eb8 c630cc2ee cd327a005
7d05c5576 74bb8271a 24d7f50fe 90c026bc8 7ffe879e0 5fafed712 d6c9e96ce c1e2da6c7 d05e2d96a
5e05d21e1 ef7be9c94 96f227f22 d978e5fa5 9a012e2c3 e92d883be b9c846196 25724af39 f23e4a765
c54b26a96 ceb4ccf17 736e2b88e 9af61e6bf 3dd728883 4d4ac8c02 3530f4f52 d46d60775 ce87a3441
460ee2b4e 3f90b86d5 91d149270 8070d3ab3 9a008593f a51d2c0e8 51b3f4b84 9be9b23a2 d6d27e453
fd5883a84 34dbcb785 4bf3c42d8 5b742b620 318371d59 5bc13a908 0a4a556fb 5e64288b3 82f5bb365
27abd56cf 12a0971cb d56878c49 fac936f84 3a2c884ad 0eac096df 290e1c0bc 52d314c05 618a2be5b
47209fcf3 cac10f438 b73cbdec8 120902ff9 9b541bd56 dd0c22142 d0b437910 e53bae176 7236fdaf1
e42f4d8cb b6bce3b70 89eabf60c 67d8543ad 69dcc2864 0b2372da3 a67d85a09 84be2eee3 945db28c4
21c3b300e a08169fa0 a442ffced ff90e91e2 3e12a577e f4ac95cfb fa5c9d403 17df3e95c 968b37080
289b94e6d bab4c167d 2d007137a 81b4251a5 8056b7f7b 36ee972f7 a3633bfc5 302432e9b 9712bb387
75f51581f 339132331 00b2ab457 bfc18e9c5 4fad18da4 f1680ee22 ebd82b3ac 5c8317df0 a85829249
f217bcd6c 82bcf77ba 8d95747c5 9c63abbaf 32cf89a24 970a29c3a c752796b8 821e445ad 694d6cc84
2ef1f33ea 56e53c6cb 5495e347c b619ba5a1 4568111b3 da6b0d8ec 2d5ff8071 539fc9d2e 313238834
ef8ce9a1c 3bc2d91d4 d251d3320 c4774c7b2 b878308fa 869fc23a0 c2c244aa7 ce53a63a9 70e4a8ad8
5e766f957 6aed1c77d 7c557ed1b af7669124 5843de817 9d255cf29 23946771c 4e3f23cb1 495652edc
13d7be7e3 cf1c51ccf 48364b9e9 87e560a1e ab9c26681 b88301cba 37fbf21d1 5910969fb 1f2a0ed44
61d852412 b6c3edad9 396fa1502 b1ff607bc a2b4a2ddc b2488a30a 3ff71a32c c33b5dfce 2bb0260fd
67f241c3e f9b9de32d 88ed58ab7 fcbde7223 8fddad394 b08af88f3 b1b05f6e5 2c7ed129c 3f7320a5c
1c1faf3b1 b9d674829 5400ed518 2cfb19c78 9420e2de7 72bf547a2 f907b5835 1ef07d22c 54fc719dc
6d6c76c6e 6345a5899 27654f610 9a9955d47 18a67d6e9 3bdf31c94 e1955a8ce edd763b69 21657ac5d
78feb17da 8802f2fd0 2c8da9912 82b343b8d b34199d31 2eeb35de6 181f123af 29c9ef346 48f012389
61dfac2ef ae4466b62 627926912 925f29199 5a7764637 8d1c7a72c 79dbd6743 43b29b1a1 a66ec993a
29aaa2468 93af05304 8c55ee6fd 8a315d9a8 feb8033cf 0a255af74 8cd3218fd 0a5a649de 74d1b6128
492247e17 8f68dd5b5 1449fa3ed 0845d84c3 80535501b 96ec0fe51 1131fd007 748cffd67 92fb5b0de
4bdb5a4c9 9478d1606 c4256e144 efd2f21cc 1fbd48b4e d2dcd00ee 899593dbd 8dfe634dc b150d457f
6d329f82c 587792f21 0502d7ae6 cbb23fc82 99426fafe 1c6149de4 8a1eb55d1 bf309e7aa 234fd2805
5747e3d93 95efc2882 5f6b7f09c 6773f955a 531aaa178 e47ce8aa0 e9ca30b8a 7e8488c5b 4083c2ded
439636c38 64c75676e 863d6cc99 d81960509 fc3f85d65 391df9d64 f3949b424 6159095aa 4f70a6dd8
d01c5aa78 200a57d2c c5bf18a11 adbca4e7c b379468a4 9e9559491 3f5a11ba8 73868e599 e2749886b
cfd84e90f c2081f3a6 164270c1c 52cfbc4b8 555c0976d 0d46187a1 674b8b6c8 d8a318616 5f0605be5
cf0c6afd9 9ec675758 c6fd7a8f2 e4f07f59f a50788305 06afa3aed 7b5f43336 0e16db4f8 89532a41c
d9a42a0b4 e59feec0b 09dd0f51f bedadd476 ada09270d 241167452 3f1ae8016 569872326 d36f16b52
`
  .trim()
  .split(/\s+/);

const packedWords = words.map((_, i) => packed(codeCells(i)));

/** How many different targets there are. */
export const targetCount: number = words.length;
