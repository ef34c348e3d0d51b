import type { VerbName } from '@paperhinge/alter';
import { verbsOfMaking } from './verbs-of-making.js';

/** What each verb does and the sentence that says it, in German; the English stands in the verb's own declaration. */
export const verbs: Readonly<Record<VerbName, { readonly does: string; readonly sentence: string }>> = {
  shorten: {
    does: 'Schneidet am Saum Länge ab oder faltet sie an einer Linie weg.',
    sentence: '{pieces} um {by} kürzen, an: {at}[, auch was daran genäht ist: {matching}]',
  },
  lengthen: {
    does: 'Gibt am Saum Länge zu oder zieht den Schnitt an einer Linie auseinander.',
    sentence: '{pieces} um {by} verlängern, an: {at}[, auch was daran genäht ist: {matching}]',
  },
  'close dart': {
    does: 'Schneidet von einer Kante bis zur Abnäherspitze auf, lässt dort einen Steg Papier stehen und dreht die Seite, bis der Abnäher zu und die Kante offen ist.',
    sentence: 'Abnäher {dart} von {piece} in die Kante {into} schließen[, bei {at}][, zu {share}]',
  },
  'share dart': {
    does: 'Schließt einen Abnäher in mehrere Kanten zugleich und in andere Abnäher, jeweils zu seinem Anteil; was kein Anteil nimmt, bleibt im Abnäher.',
    sentence: 'Abnäher {dart} von {piece} aufteilen auf {among}[, gedreht um {pivot}]',
  },
  'pinch out': {
    does: 'Faltet weg, was an Hals oder Armloch absteht, bis auf nichts an der Spitze eines Abnähers, der sich um so viel öffnet.',
    sentence:
      'An {edge} von {piece}[ bei {at}] {by} wegfalten, in den Abnäher {into}[, gedreht um {pivot}][, auch was daran genäht ist: {matching}]',
  },
  'move dart': {
    does: 'Schließt einen Abnäher und öffnet ihn um denselben Winkel an anderer Stelle; gedreht wird um seine Spitze oder um einen Punkt.',
    sentence:
      'Abnäher {dart} von {piece} in die Kante {to.edge} verlegen[, bei {to.at}][, gedreht um {pivot}][, Spitze {point back} zurückgesetzt][, {share} davon][, genannt {name}]',
  },
  'join darts': {
    does: 'Schließt einen Abnäher und öffnet einen anderen um dessen Winkel; gedreht wird um die Spitze des bleibenden oder um einen Punkt. Ein Abnäher tut dann die Arbeit beider.',
    sentence:
      'Abnäher {dart} von {piece} in den Abnäher {into} schließen[, gedreht um {pivot}][, Spitze {point back} zurückgesetzt]',
  },
  'open dart': {
    does: 'Zeichnet einen neuen Abnäher, der einer Kante ein Maß wegnimmt, seine Spitze rechtwinklig zur Kante oder an einem Punkt. Die Kante wird um dieses Maß kürzer.',
    sentence:
      'Abnäher {name} in die Kante {edge} von {piece} zeichnen, bei {at}, {intake} weit[, {depth} tief][, bis {to}]',
  },
  'resize dart': {
    does: 'Lässt einen Abnäher an seinem Platz mehr oder weniger wegnehmen, je die Hälfte auf jeder Seite. Die Kante wird um so viel kürzer oder länger.',
    sentence: 'Abnäher {dart} von {piece}: {to} wegnehmen',
  },
  'move dart point': {
    does: 'Setzt die Spitze eines Abnähers anderswohin: tiefer oder kürzer, höher oder tiefer, oder an einen Punkt. Der Abnäher beginnt, wo er begann; ungleiche Schenkel werden angeglichen.',
    sentence:
      'Spitze des Abnähers {dart} von {piece} versetzen[: {deeper} tiefer][: {up} nach oben][: nach {to}]',
  },
  'change dart': {
    does: 'Nimmt als Einhalteweite, Kräusel, Falte oder Biese auf, was ein Abnäher wegnahm, die Kante so lang genäht wie vorher; oder lässt es als Weite in den Saum.',
    sentence: 'Abnäher {dart} von {piece} verwandeln: {into}[, {stitched} weit abgesteppt]',
  },
  'add contour dart': {
    does: 'Zeichnet einen Doppelabnäher in ein Teil, am weitesten auf einer Linie und darüber und darunter spitz.',
    sentence:
      'Doppelabnäher „{name}“ auf der Linie {line} von {piece}, nach {out}, {intake} weit, {above} nach oben und {below} nach unten',
  },
  'true dart': {
    does: 'Zeichnet die Schenkel eines Abnähers gerade und gleich lang; die Kante neben dem kürzeren wird zum neuen Ende gezeichnet.',
    sentence: 'Schenkel des Abnähers {dart} von {piece} angleichen',
  },
  divide: {
    does: 'Schneidet ein Teil entlang einer gezeichneten Linie oder gerade von einer Kante oder einem Abnäher zum anderen auseinander und gibt dort eine Naht: eine Passe, eine Teilungsnaht, eine Wiener Naht.',
    sentence:
      '{piece} teilen[ entlang {line}][ von {from.edge}][ bei {from.at}][ vom Abnäher {from.dart}][ durch {through}][ bis {to.edge}][ bei {to.at}][ bis zum Abnäher {to.dart}]; das abgetrennte Teil heißt {name}[, die Naht {seam}][, mit {allowance} Zugabe][, über die Naht hinaus: {matching}]',
  },
  'cut off band': {
    does: 'Schneidet entlang einer Kante einen überall gleich breiten Streifen ab, geformt wie sie, und näht ihn als Blende wieder an; wo er sein eigener Beleg ist, wird er doppelt zugeschnitten.',
    sentence:
      'Blende „{name}“ {width} breit entlang {edge} abschneiden[, doppelt: {doubled}][, die Naht {seam}][, mit {allowance} Zugabe][, auch die Teile daneben: {matching}]',
  },
  'join pieces': {
    does: 'Legt zwei Teile an ihrer Naht oder an ihr bis zu einer Stelle Kante an Kante und macht ein Teil daraus; was sich dahinter öffnet, bleibt als Abnäher.',
    sentence:
      'Die beiden Teile der Naht {seam} verbinden[, auf {within} genau][, bis {up to}][; was sich dahinter öffnet, bleibt als Abnäher {dart}]',
  },
  'move seam': {
    does: 'Verlegt eine Naht in eines ihrer beiden Teile: Dort wird ein Streifen an ihr abgeschnitten und an das andere Teil gesetzt. Das Kleidungsstück behält seine Form.',
    sentence: 'Naht {seam} um {by} nach {into} verlegen[, auch die Nähte, die sie fortsetzen: {matching}]',
  },
  'fold to seam': {
    does: 'Macht aus dem Bruch eines Teils eine Naht: Das Teil wird als Paar zugeschnitten und dort zusammengenäht.',
    sentence: 'Aus dem Bruch von {piece} eine Naht machen[, mit {allowance} Zugabe][, genannt {seam}]',
  },
  'seam to fold': {
    does: 'Legt eine gerade Mittelnaht stattdessen in den Bruch: Aus dem Paar wird ein Teil ohne diese Naht.',
    sentence: '{edge} von {piece} in den Bruch legen',
  },
  slash: {
    does: 'Schneidet den Schnitt an mehreren Stellen zugleich auf und öffnet jede um ihr eigenes Maß oder schiebt sie übereinander, gelenkig am anderen Ende, an einem Punkt im Teil, oder an beiden Enden offen.',
    sentence:
      '{piece} aufschneiden und jeden Schnitt um sein eigenes Maß öffnen: {slashes}[, auch die Teile daneben: {matching}]',
  },
  'draft circle skirt': {
    does: 'Zeichnet einen Rock als ganzen, dreiviertel, halben oder viertel Teller nach Taille und Länge, in Bahnen im Bruch.',
    sentence:
      'Tellerrock „{name}“ ({part}) zeichnen, Taille {waist}, {length} lang[, in {panels} Bahnen][, mit {allowance} Zugabe][ und {hem} am Saum][, aus {fabric}]',
  },
  'draft flounce': {
    does: 'Zeichnet einen Volant: aufgeschnittene Ringe, deren innere Linien zusammen so lang sind wie die Kanten, an die sie genäht werden. Mehr Ringe fallen weiter.',
    sentence:
      'Volant „{name}“ für {along} zeichnen, {width} breit[, in {rings} Ringen][, mit {hem} am Saum][, aus {fabric}][, ein Saum darunter wird Naht mit {allowance}]',
  },
  'draft godet': {
    does: 'Zeichnet einen Kreisausschnitt, der unten in eine Naht eingesetzt wird und dort den Saum weitet.',
    sentence: 'Godet „{name}“ in die Naht {seam} zeichnen, {depth} vom Saum hinauf und am Saum {sweep}',
  },
  'leave slit': {
    does: 'Lässt einen Teil einer Naht als Schlitz offen. Keine Linie bewegt sich.',
    sentence: 'In {edge} einen Schlitz von {length} offen lassen',
  },
  'add vent': {
    does: 'Setzt am unteren Ende einer Kante einen Streifen für einen Gehschlitz an, oben schräg, und zieht eine Bruchlinie, wo die Kante war.',
    sentence: 'Gehschlitz an {edge}, {length} vom Saum hinauf und {width} breit',
  },
  'recut armhole': {
    does: 'Macht ein Armloch an der Seitennaht tiefer oder höher und rückt es an der Schulter nach innen oder außen; dazwischen behält es seine Form.',
    sentence:
      'Armloch von {pieces} neu schneiden[, {lower} tiefer][, an der Schulter {in} weiter innen][, Ärmel und Teile daneben passend: {matching}]',
  },
  'recut edge': {
    does: 'Zeichnet eine Kante neu: weiter innen oder außen, gleichmäßig oder an einem Ende mehr; entlang einer gezeichneten Linie; glatt durch Punkte; zwischen ihren Enden auf eine Länge; oder wie eine andere Kante.',
    sentence:
      '{edge} von {piece} neu schneiden[, {in} weiter innen][, {out} weiter außen][, entlang {line}][, durch {through}][, {length} lang][, wie {like}]',
  },
  'shape hem': {
    does: 'Gibt einem Saum eine neue Form: an der Seite und in der Mitte höher oder tiefer, gebogen und zu beiden rechtwinklig, oder gerade.',
    sentence:
      'Saum[ {edge}] von {piece} formen[, an der Seite {side} höher][, in der Mitte {centre} höher][, {line}][, auch die Teile daneben: {matching}]',
  },
  'level hem': {
    does: 'Macht Teile so lang, dass ihr Saum in einer Höhe über dem Boden liegt, gemessen von einer Linie hinunter, deren Höhe bekannt ist, etwa der Taille.',
    sentence:
      'Saum von {pieces} auf {height} über dem Boden legen; {from} steht {stands} hoch[, auch was daran genäht ist: {matching}]',
  },
  'match edge': {
    does: 'Misst eine Naht ab und macht eine ihrer Kanten an einem Ende so lang, wie die andere es braucht oder wie verlangt; die Kante daneben wird zur neuen Ecke gezeichnet.',
    sentence: '{edge} am Ende „{at}“ ihrer Naht anpassen[, auf {length}]',
  },
  'add button stand': {
    does: 'Setzt jenseits einer Mittelkante einen Streifen für Knöpfe und Knopflöcher an und auf Wunsch dahinter einen angeschnittenen, umgeschlagenen Beleg.',
    sentence: 'Übertritt {width} breit an {edge} von {piece}[, mit {facing} breitem angeschnittenem Beleg]',
  },
  'add grown-on facing': {
    does: 'Setzt jenseits einer geraden Kante einen Beleg oder Saumstreifen an, in einem Stück mit dem Teil und so geformt, dass er umgeschlagen Kante auf Kante liegt.',
    sentence: 'Angeschnittener Beleg {width} breit an {edges}[, mit {turn} zum Einschlagen]',
  },
  'wrap over': {
    does: 'Zeichnet ein Vorderteil, das über das andere greift: Der Hals läuft schräg von der Schulter bis jenseits der Mitte, von dort die Kante nach unten.',
    sentence: '{piece} an {edge} um {by} übergreifen lassen, der Hals schräg bis {depth} hinunter',
  },
  'raise neckline': {
    does: 'Lässt einen Hals als angeschnittenen Kamin hochstehen; die Schulter läuft in einem Bogen zu seinem Ende hinauf.',
    sentence: 'Halsausschnitt von {pieces} um {by} hochziehen',
  },
  'drape neckline': {
    does: 'Schneidet ein halbes Teil vom Hals her auf und spreizt es dort, dann wird der Hals gerade und rechtwinklig zur Mitte gezeichnet: ein Wasserfallausschnitt.',
    sentence:
      'Wasserfallausschnitt an {piece}, um {by} gespreizt[, mit {slashes} Schnitten][ bis {to.edge}][ bei {to.at}]',
  },
  'cut keyhole': {
    does: 'Schneidet unter dem Hals eine ovale Öffnung in ein Teil im Bruch; ihre Kante will einen Beleg oder eine Einfassung.',
    sentence: 'Schlüsselloch-Ausschnitt in {piece}, {below} unter dem Hals, {depth} tief und {width} breit',
  },
  spread: {
    does: 'Schneidet den Schnitt von einer Kante zur anderen auf und spreizt ihn, an einem Ende gelenkig oder parallel; ein negatives Maß schiebt ihn übereinander.',
    sentence:
      '{piece} von {from.edge}[ bei {from.at}] bis {to.edge}[ bei {to.at}] aufschneiden und spreizen[ um {by}][ um {angle}][ auf {ratio} ihrer Länge][, am anderen Ende um {other end}][, mit {slashes} Schnitten][, Gelenk: {hinge}][, aufgenommen als {into}][, genannt {name}][, {stitched} weit abgesteppt][, auch die Teile daneben: {matching}]',
  },
  'take in': {
    does: 'Macht eine Naht im ganzen Kleidungsstück um ein Maß enger, geteilt auf alle ihre Kanten; von einer Stelle zur anderen läuft es auf nichts aus.',
    sentence:
      'Naht {seam} um {by} enger[, voll bis {from}][, nichts ab {to}][, zwischen {between}][, auch die Nähte, die sie fortsetzen: {matching}]',
  },
  'let out': {
    does: 'Macht eine Naht im ganzen Kleidungsstück um ein Maß weiter, geteilt auf alle ihre Kanten; von einer Stelle zur anderen läuft es auf nichts aus.',
    sentence:
      'Naht {seam} um {by} weiter[, voll bis {from}][, nichts ab {to}][, zwischen {between}][, auch die Nähte, die sie fortsetzen: {matching}]',
  },
  'recut neckline': {
    does: 'Schneidet einen neuen Ausschnitt: ein V im alten, einen V-förmigen, runden, eckigen, U-Boot-, tief runden oder Herzausschnitt nach Tiefe und halber Weite, oder einen entlang einer gezeichneten Linie.',
    sentence:
      'Neuer Ausschnitt an {piece}: {shape}[, {depth} tief][, {half width} nach jeder Seite][, {shoulder} Schulter bleiben][, entlang {line}]',
  },
  true: {
    does: 'Streicht Kanten mit Stufen oder Knicken glatt aus, höchstens ein Grenzmaß von der alten Linie entfernt; beide Enden bleiben.',
    sentence:
      '{edges} ausstreichen[, höchstens um {within} bewegt][, gerade: {straight}][, von {from}][, bis {to}]',
  },
  'set allowance': {
    does: 'Gibt Kanten eine andere Naht- oder Saumzugabe. Die Nahtlinie bleibt, die Schnittlinie wandert.',
    sentence: 'Zugabe von {edges} auf {to} setzen[, auch was daran genäht ist: {matching}]',
  },
  'set seam': {
    does: 'Sagt, wie eine Naht genäht wird: wie viel eine Seite eingehalten, gekräuselt, gedehnt oder in Falten gelegt wird, und wie genau beide passen müssen.',
    sentence: 'Naht {seam} mit {ease} Mehrweite nähen[, {taken up}][, auf {tolerance} genau]',
  },
  'add notches': {
    does: 'Misst beide Seiten einer Naht ab und gibt beiden Passzeichen, die sich beim Nähen treffen.',
    sentence:
      'Naht {seam} mit [{count} Passzeichen][einem Passzeichen bei {at}] versehen[, auch was sonst daran genäht ist: {matching}]',
  },
  unfold: {
    does: 'Klappt ein halbes Teil um seinen Bruch zu einem ganzen auf, das einfach zugeschnitten wird; jede gespiegelte Kante bekommt einen eigenen Namen.',
    sentence: '{piece} um den Bruch aufklappen',
  },
  'remove piece': {
    does: 'Nimmt ein Teil aus dem Schnitt, mit den Nähten, deren eine Seite es war.',
    sentence: '{piece} entfernen',
  },
  'cut lapel': {
    does: 'Zeichnet ein Revers an ein Vorderteil: die Umbruchlinie von der Schulter zum Umbruch, die Spiegelnaht, an die der Kragen genäht wird, den Einschnitt und das Revers bis an seine Spitze.',
    sentence:
      'Revers an {piece} zwischen {neck} und {edge} zeichnen, Umbruch bei {break}[, {width} breit][, die Spitze {down} tief][, der Kragen {stand} hoch stehend][, die Spiegelnaht {gorge} tief beginnend][, {notch} Einschnitt][, um {belly} gebogen]',
  },
  'add fly extension': {
    does: 'Schneidet der vorderen Mitte beider Vorderteile einen Schlitzbeleg an, mit dem Bruch des oben liegenden, seiner Absteppung und dem Bruch des anderen daneben.',
    sentence:
      'Schlitzbeleg an {edge} von {piece} anschneiden, Öffnung {length}[, {below} tiefer reichend][, {width} breit][, Absteppung bei {topstitch}][, {over} oben][, das andere {underlap} weiter]',
  },
  refresh: {
    does: 'Zeichnet Bündchen, Belege, Kragen und was sonst für Kanten gemacht wurde neu, für diese Kanten, wie sie jetzt sind.',
    sentence: 'Für Kanten Gezeichnetes neu zeichnen[: {pieces}]',
  },
  adjust: {
    does: 'Passt den Schnitt einer Figur an: starke Brust, Hohlkreuz, gerade Schultern und so weiter, jede durch ihre üblichen Schnitte, an den Teilen, die es betrifft.',
    sentence: 'Anpassen: {for}, um {by}',
  },
  'change cap': {
    does: 'Macht die Armkugel höher oder flacher: bei gleicher Naht wird der Ärmel schmaler oder weiter, bei gleicher Weite ändert sich die Mehrweite.',
    sentence: 'Kugel von {piece} um {by} höher, gleich bleibt: {keep}',
  },
  'walk cap': {
    does: 'Misst die Armkugel am Armloch ab und setzt beider Passzeichen neu: im untersten Drittel keine Mehrweite, der Rest auf vorn und hinten verteilt, der höchste Punkt an der Schulter.',
    sentence: 'Kugel in das Armloch einpassen, Naht {seam}[, {front} der Mehrweite vorn]',
  },
  'shape sleeve': {
    does: 'Gibt einem Ärmel Weite: ein Puffärmel an der Kugel gekräuselt, ein Trompetenärmel am Saum weit, ein Bischofsärmel in die Manschette gekräuselt, ein kurzer Flatterärmel.',
    sentence:
      '{piece} formen: {into}, um {by} weiter[, {drop} höher][, am Unterarm {underarm} lang][, mit {slashes} Schnitten]',
  },
  'bend sleeve': {
    does: 'Biegt einen geraden Ärmel am Ellbogen nach vorn: quer aufgeschnitten, vorn ein Steg Papier, hinten geöffnet zu einem Ellbogenabnäher oder zu Einhalteweite.',
    sentence:
      '{piece} am Ellbogen biegen, hinten um {by} geöffnet[, aufgenommen: {into}][, {depth} tief][, genannt {name}]',
  },
  'divide sleeve': {
    does: 'Macht einen zweiteiligen Ärmel: Oberärmel und Unterärmel, mit einer vorderen und einer hinteren Naht statt der Unterarmnaht, am Ellbogen gebogen, wenn gewünscht.',
    sentence:
      '{piece} in Ober- und Unterärmel teilen; der Unterärmel heißt {name}, die vordere Naht {front}, die hintere {back} von der Unterarmnaht[, am Ellbogen um {bend} geöffnet]',
  },
  'cut kimono': {
    does: 'Schneidet aus einem eingesetzten Ärmel einen angeschnittenen, einen Kimonoärmel: halb an das Vorderteil, halb an das Rückenteil gelegt, mit neu gezeichneter Unterarmnaht und einem Zwickel, wenn gewünscht.',
    sentence:
      'Kimonoärmel schneiden an der Naht {seam}, {slope} unter der Schulter geneigt, die Unterarmnaht {drop} die Seite hinab[, mit einem Bogen von {curve} Radius][, mit einem {gusset} tiefen Zwickel]',
  },
  'separate pair': {
    does: 'Macht aus einem Paar zwei Teile, das gezeichnete und sein Spiegelbild, jedes einzeln zugeschnitten, damit links und rechts verschieden sein können.',
    sentence: 'Paar von {piece} trennen; das Spiegelbild heißt {name}',
  },
  'cut raglan': {
    does: 'Schneidet aus einem eingesetzten Ärmel einen Raglanärmel: die oberen Teile von Vorder- und Rückenteil werden vom Hals zum Armloch abgeschnitten und an den Ärmel gesetzt, mit einem Abnäher oder einer Naht über der Schulter.',
    sentence:
      'Raglanärmel schneiden an der Naht {seam}, vorn {front} und hinten {back} den Hals hinab[, bis {up} das Armloch hinauf][, um {bow} gebogen][, über der Schulter: {shoulder}]',
  },
  refit: {
    does: 'Passt ein gewebtes Kleidungsstück an Maschenware an oder umgekehrt: Seiten, Abnäher, Armloch und Kugel, mit Rechenschaft über jede Änderung.',
    sentence:
      'Anpassen an {for}, um {by} rundherum[, Armloch um {armhole}][, {cap ease} Mehrweite in der Kugel]',
  },
  ...verbsOfMaking,
};
