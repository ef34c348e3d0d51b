/** What is said of a value that a field cannot take: it goes on after the field's name ("by" is not a length). */
export interface Words {
  readonly what: string;
  readonly remedy: string;
}

/** By code; a fault whose place knows better says its own. */
export const wording = {
  'length-not-understood': {
    what: 'is not a length',
    remedy: 'Write a length such as 12, 12 mm, 1.2 cm, 3/8 in or 2 7/8".',
  },
  'length-out-of-range': { what: 'is beyond any garment', remedy: 'Check its unit.' },
  'percent-not-understood': {
    what: 'is not a percentage with its sign',
    remedy: 'Write a percentage with its sign, such as 80 %.',
  },
  'percent-out-of-range': { what: 'is beyond its range', remedy: 'Give 0 to 100 %.' },
  'position-not-understood': {
    what: 'is not a place on an edge',
    remedy: 'Write 1/3, 40 %, 1/3 from EDGE or 60 mm from EDGE.',
  },
  'position-off-edge': {
    what: 'lies off its edge',
    remedy: 'Give a share from 0 to 100 % or a length within the edge.',
  },
  'edge-not-understood': {
    what: 'is not an edge of a piece',
    remedy: 'Write PIECE.EDGE, such as front.neck.',
  },
  'name-not-understood': { what: 'is not a name', remedy: 'Write a name; one made of digits needs quotes.' },
  'name-not-printable': {
    what: 'is not a printable name of up to 100 characters',
    remedy: 'Write letters, digits, spaces and signs on one line.',
  },
  'angle-not-understood': { what: 'is not an angle', remedy: 'Write degrees, such as 12, 12° or 12 deg.' },
  'angle-out-of-range': { what: 'is half a turn or more', remedy: 'Give less than 180 degrees.' },
  'count-not-understood': { what: 'is not a whole number', remedy: 'Write a whole number.' },
  'count-out-of-range': { what: 'is out of range', remedy: 'Give 1 to 200.' },
  'choice-not-understood': { what: 'is neither yes nor no', remedy: 'Write yes or no.' },
  'list-empty': { what: 'names nothing', remedy: 'Name at least one.' },
  'missing-field': { what: 'lacks a field', remedy: 'Add it.' },
  'fields-conflict': { what: 'has fields that exclude each other', remedy: 'Keep one of them.' },
  'paper-not-understood': {
    what: 'is not a size of paper',
    remedy: 'Write a4, letter … or a size such as 600 x 900 mm.',
  },
  'margins-not-understood': {
    what: 'is neither one length nor four',
    remedy: 'Write one length, or four: [top, right, bottom, left].',
  },
  'square-not-understood': {
    what: 'is not what a square measured both ways',
    remedy: 'Write two lengths, across and down, such as [49.5, 50.2].',
  },
  'mapping-expected': { what: 'has no fields', remedy: 'Write its fields as "name: value".' },
  'too-many-steps': { what: 'has over 500 steps', remedy: 'Divide the work among several sheets.' },
  'list-expected': { what: 'is not a list', remedy: 'Write each item on its own line after "- ".' },
} as const satisfies Readonly<Record<string, Words>>;

export type WordingCode = keyof typeof wording;
