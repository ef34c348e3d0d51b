/** Verbs that make a piece from an edge or a measure, in German. */
export const verbsOfMaking = {
  'draft band': {
    does: 'Zeichnet ein gerades Bündchen für Kanten, die im Kleidungsstück aufeinander folgen, um ein Verhältnis kürzer als sie, so dass es beim Annähen gedehnt wird.',
    sentence:
      'Bündchen „{name}“ für {along} zeichnen: {ratio} ihrer Länge, {width} breit[, über die Lücke {gap}][, {join} zum Schließen][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft waistband': {
    does: 'Zeichnet einen Bund, gerade und gefaltet oder geschwungen in zwei Lagen, mit Über- und Untertritt zum Schließen.',
    sentence:
      'Bund „{name}“ für {along} zeichnen, fertig {width} breit[, {length} lang][, die Kante {taken up}][, {overlap} Übertritt][, {underlap} Untertritt][, die andere Kante {far edge}][, Zuschnitt: {cut}][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft cuff': {
    does: 'Zeichnet Manschetten, gefaltet oder in zwei Lagen, gerade oder geschwungen, in die der weitere Ärmel gekräuselt, eingehalten oder in Falten gelegt wird, mit Über- und Untertritt zum Knöpfen.',
    sentence:
      'Manschette „{name}“ für {along} zeichnen, fertig {width} breit[, {length} lang][, die Kante {taken up}][, {overlap} Übertritt][, {underlap} Untertritt][, die andere Kante {far edge}][, Zuschnitt: {cut}][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft collar': {
    does: 'Zeichnet einen Kragen für einen Halsausschnitt: einen Stehkragen, der sich anlehnt, einen Hemdkragen mit Steg und Umschlag, oder einen flachen aus an der Schulter zusammengelegtem Vorder- und Rückenteil.',
    sentence:
      'Kragen „{name}“ ({kind}) für {along} zeichnen, hinten {width} hoch[, Steg {stand} hoch][, vorn um {rise} ansteigend][, {extension} über den Hals hinaus][, Spitzen {point} lang][, um {spread} ausgestellt][, an der Schulter {overlap} überlappt][, aus {fabric}]',
  },
  'draft shawl collar': {
    does: 'Zeichnet einen Schalkragen an ein Vorderteil, in einem Stück mit ihm, mit Naht in der hinteren Mitte, angenäht an den hinteren Hals.',
    sentence:
      'Schalkragen „{name}“ an {piece} zwischen {neck} und {edge} zeichnen, für den hinteren Hals {along}, Umbruch bei {break}[, {stand} hoch stehend][, hinten {width} breit][, um {lay} ausgelegt][, das Revers {lapel} breit]',
  },
  'draft notched collar': {
    does: 'Zeichnet den Kragen eines Vorderteils mit Revers, vom Einschnitt über die Spiegelnaht um den hinteren Hals, mit schräg geschnittenem Unterkragen; der Oberkragen ist um die Rollweite größer.',
    sentence:
      'Reverskragen „{name}“ für {along} zeichnen[, hinten {width} breit][, {stand} hoch stehend][, um {lay} ausgelegt][, Vorderkante {front} lang][, Einschnitt um {notch} geöffnet][, Oberkragen um {turn} größer][, aus {fabric}]',
  },
  'draft combined facing': {
    does: 'Zeichnet den Beleg von Hals und Armloch in einem, für ein Kleidungsstück ohne Ärmel, mit geschlossenen Abnähern abgenommen; die Belege von vorn und hinten werden an Schulter und Seite aneinandergenäht.',
    sentence:
      'Kombinierten Beleg „{name}“ für {along} zeichnen[, {width} an der Mitte hinab][, {side} an der Seite hinab][, aus {fabric}]',
  },
  'draft front facing': {
    does: 'Zeichnet den Beleg eines Vorderteils, das sich öffnet, vom Saum bis an die Schulter, mit Revers oder Schalkragen; wo diese nach außen umbrechen, ist er um die Rollweite größer.',
    sentence:
      'Vorderen Beleg „{name}“ für {along} zeichnen[, am Saum {width} breit][, an der Schulter {shoulder}][, um {turn} größer][, wo diese umbrechen: {rolling}][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft fly': {
    does: 'Zeichnet die Teile eines Hosenschlitzes: den Beleg des oben liegenden Vorderteils, dessen Absteppung darauf markiert wird, und den Untertritt hinter dem Reißverschluss für das andere.',
    sentence:
      'Schlitz „{name}“ für {edge} von {piece} zeichnen, Öffnung {length}[, {below} tiefer reichend][, {width} breit][, Absteppung bei {topstitch}][, {over} oben][, mit eigenem Beleg: {facing}][, aus {fabric}]',
  },
  'draft tie': {
    does: 'Zeichnet Bindebänder, Träger, einen Gürtel oder Schlaufen: der Länge nach gefaltete und gewendete Streifen, die zu keiner Kante gehören.',
    sentence:
      'Band „{name}“ zeichnen, fertig {length} lang und {width} breit[, {count}-mal][, mit Spitze: {pointed}][, aus {fabric}]',
  },
  'draft casing': {
    does: 'Zeichnet einen Tunnel, einen über das Gummiband gefalteten Streifen so lang wie seine Kanten, und das Gummiband, das ihn zusammenzieht.',
    sentence:
      'Tunnel „{name}“ für {along} zeichnen, für Gummiband {elastic} breit und {length} lang[, {room} Spiel][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft placket': {
    does: 'Öffnet eine Kante um einen Schlitz und zeichnet den Streifen, der seine beiden Seiten einfasst.',
    sentence:
      'Schlitzbesatz „{name}“ für einen Schlitz von {length} in {along} zeichnen[, fertig {width} breit][, aus {fabric}]',
  },
  'draft interfacing': {
    does: 'Nimmt die Einlage eines Teils oder Belegs als eigenes Teil ab: mit dessen Zugaben, so dass die Nähte sie mitfassen, oder um ein Maß innerhalb der Nahtlinie.',
    sentence:
      'Einlage „{name}“ für {piece} zeichnen[, {inside} innerhalb der Nahtlinie][, {count}-mal zugeschnitten][, aus {fabric}]',
  },
  'draft patch pocket': {
    does: 'Zeichnet eine aufgesetzte Tasche mit Saum am Eingriff und ihren Platz auf dem Teil.',
    sentence:
      'Aufgesetzte Tasche „{name}“ für {piece} zeichnen, {width} breit und {height} hoch[, Eingriff bei {mark}][, Eingriff {beside.in} von der Kante {beside.edge} bei {beside.at}][, Ecken: {corners}][, um {by}][, aus {fabric}]',
  },
  'draft seam pocket': {
    does: 'Lässt eine Naht für den Eingriff einer Tasche offen und zeichnet deren zwei Beutel.',
    sentence:
      'Tasche „{name}“ in der Naht {seam} zeichnen, {from} von deren Anfang[, Eingriff {mouth} lang][, {depth} tief][, {below} nach unten][, aus {fabric}]',
  },
  'draft hood': {
    does: 'Zeichnet eine Kapuze aus zwei Hälften für einen Halsausschnitt.',
    sentence:
      'Kapuze „{name}“ für {along} zeichnen, {height} hoch und {depth} tief[, die Halskante um {rise} ansteigend][, aus {fabric}]',
  },
  'draft lining': {
    does: 'Zeichnet ein Futter für Teile: von ihnen abgenommen, am Saum kürzer, mit Bewegungsfalte in der hinteren Mitte, zusammengenäht wie sie.',
    sentence:
      'Futter für {pieces} zeichnen[, {shorter} kürzer][, mit Bewegungsfalte von {pleat}][, aus {fabric}]',
  },
  'draft slant pocket': {
    does: 'Schneidet den Eingriff einer Tasche schräg von der Taille zur Seite und zeichnet das Seitenteil dahinter und den Beutel davor.',
    sentence:
      'Schräge Tasche „{name}“ an {piece} zwischen {waist} und {side} zeichnen[, von {in}][ bis {down}][, Beutel {depth} tiefer][ und {below} länger][, aus {fabric}]',
  },
  'draft strip': {
    does: 'Zeichnet einen geraden Streifen, so lang wie seine Kanten im ganzen Kleidungsstück und so breit zugeschnitten wie angegeben.',
    sentence:
      'Streifen „{name}“ für {along} zeichnen, {width} breit zugeschnitten[, {join} zum Schließen][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft binding': {
    does: 'Zeichnet einen Schrägstreifen, so lang wie seine Kanten im ganzen Kleidungsstück und viermal so breit zugeschnitten, wie er fertig ist.',
    sentence:
      'Einfassung „{name}“ für {along} zeichnen, fertig {width} breit[, {join} zum Schließen][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft facing': {
    does: 'Zeichnet einen Beleg: außen die Kante selbst, innen ihre Parallele, im Bruch, wo es ihr Teil ist. Belege mehrerer Teile werden an den Nähten dazwischen aneinandergenäht oder in einem Stück geschnitten.',
    sentence:
      'Beleg „{name}“ für {along} zeichnen, {width} breit[, {join} zum Schließen][, aus {fabric}][, in einem Stück: {joined}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft stay': {
    does: 'Zeichnet eine Sicherung, die eine Kante vor dem Ausdehnen bewahrt: außen die Kante selbst, innen ihre Parallele, ganz und ohne Zugabe.',
    sentence:
      'Sicherung „{name}“ für {along} zeichnen, {width} breit[, {join} zum Schließen][, aus {fabric}]',
  },
} as const;
