/** Every field of a sheet beside its steps, as an example that is read. */
export const sheetExample = `pattern: shift.svg          # relative to the sheet's own folder
title: Concert top
unit: cm                    # of bare lengths: mm, cm or in
language: en                # of report, pages and summary: en or de
wearer: { unit: in, bust girth: 40, hip girth: 42, head girth: 22 1/2 }
fabrics:
  main: { width: 150, stretch: 40 %, nap: yes }
  contrast: { width: 140, stretch: { across: 45 %, along: 10 % }, recovery: 90 % }
let: { hem drop: 21, side ease: hip girth / 8 + 1 }   # figures by name, and sums of them with spaces round the signs
scale: 1/4                  # the drawing is at a quarter; or 1 mm: what one unit of it is
size: { between: [12, 14], at: { bust: 0 %, hip: 100 % } }   # or a size of the drawing: 14
tolerance: 2 mm             # by which the two sides of a seam may differ and still match
seams:                      # add to the drawing's, or are told instead of those of the same names
  side: { a: [front.side-upper from armhole, front.side-lower], b: back.side from armhole }
  waist: { a: "skirt.waist from side, 60 mm to 220 mm", b: band.lower, ease: 25 %, taken up: gathered }
fastenings:
  back zip: { kind: zip, along: back.centre-back from neck, length: 40, sort: invisible }
  front buttons: { kind: buttons, along: front.centre-front from neck, count: 7, size: 15 mm }
opening: { sleeve.wrist: 8 }
pieces:
  front: { role: bodice, cut: 2, also cut: { lining: 2, interfacing: 1 }, finish: { hem: turned twice }, topstitch: { hem: 2 } }
  cuff: { outline: path12, edges: [top, end, bottom, start], allowance: 1, line drawn: stitching }
steps:
  - unfold: { piece: front }
    off: yes                # stands here and is not done
print: { paper: [a4, 600 x 900 mm], overlap: edge to edge, measured: [49.8 mm, 50.1 mm], hide: stitching lines }`;

/** A piece that was measured on paper, as an example that is read. */
export const measuredExample = `title: Pocket by figures
unit: cm
pieces:
  pocket:
    points:                  # across to the right, then down
      A: [0, 0]
      B: [16, 0]
      C: { mirror: D, over: [M, N] }
      D: { from: { A: 14, B: 21.2 }, towards: down }   # by its distances; more than two are evened out
      M: [8, 0]
      N: [8, 10]
      T: [8, 17.5]
      U: [0, 7]
    edges:                   # once round, either way; two points: straight, more: a fair curve
      top: [A, B]
      right: [B, C]
      bottom: { through: [C, T, D], starts: smooth, ends: smooth }   # or square: at a right angle
      left: { through: [D, A], length: 14 }                          # what the tape said
    grain: [M, N]
    notches: { U: single }   # on the edge nearest to the point
    marks: { middle: M }
    lines: { stitch here: { through: [M, N], kind: placement } }   # a list alone is a level, such as bust
    kinds: { top: hem }
    allowance: 1
    line drawn: stitching    # or cutting, with included allowance
    cut: 2`;
