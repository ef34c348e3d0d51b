import { draftBandForm, draftBandVerb } from './derive/draft-band.js';
import { draftCasingForm, draftCasingVerb } from './derive/draft-casing.js';
import { draftCollarForm, draftCollarVerb } from './derive/draft-collar.js';
import { draftCombinedFacingForm, draftCombinedFacingVerb } from './derive/draft-combined-facing.js';
import { draftFacingForm, draftFacingVerb } from './derive/draft-facing.js';
import { draftFlyForm, draftFlyVerb } from './derive/draft-fly.js';
import { draftFrontFacingForm, draftFrontFacingVerb } from './derive/draft-front-facing.js';
import { draftHoodForm, draftHoodVerb } from './derive/draft-hood.js';
import { draftInterfacingForm, draftInterfacingVerb } from './derive/draft-interfacing.js';
import { draftLiningForm, draftLiningVerb } from './derive/draft-lining.js';
import { draftNotchedCollarForm, draftNotchedCollarVerb } from './derive/draft-notched-collar.js';
import { draftPatchPocketForm, draftPatchPocketVerb } from './derive/draft-patch-pocket.js';
import { draftPlacketForm, draftPlacketVerb } from './derive/draft-placket.js';
import { draftSeamPocketForm, draftSeamPocketVerb } from './derive/draft-seam-pocket.js';
import { draftSlantPocketForm, draftSlantPocketVerb } from './derive/draft-slant-pocket.js';
import { draftStayForm, draftStayVerb } from './derive/draft-stay.js';
import { draftBindingForm, draftBindingVerb, draftStripForm, draftStripVerb } from './derive/draft-strip.js';
import { draftTieForm, draftTieVerb } from './derive/draft-tie.js';
import {
  draftCuffForm,
  draftCuffVerb,
  draftWaistbandForm,
  draftWaistbandVerb,
} from './derive/draft-waistband.js';
import { adjustForm, adjustVerb } from './fit/adjust/adjust.js';
import { refitForm, refitVerb } from './fit/adjust/refit.js';
import { addButtonStandForm, addButtonStandVerb } from './operations/add-button-stand.js';
import { addContourDartForm, addContourDartVerb } from './operations/add-contour-dart.js';
import { addFlyExtensionForm, addFlyExtensionVerb } from './operations/add-fly-extension.js';
import { addGrownOnFacingForm, addGrownOnFacingVerb } from './operations/add-grown-on-facing.js';
import { addNotchesForm, addNotchesVerb } from './operations/add-notches.js';
import { addVentForm, addVentVerb, leaveSlitForm, leaveSlitVerb } from './operations/add-vent.js';
import { bendSleeveForm, bendSleeveVerb } from './operations/bend-sleeve.js';
import { changeCapForm, changeCapVerb } from './operations/change-cap.js';
import { changeDartForm, changeDartVerb } from './operations/change-dart.js';
import { closeDartForm, closeDartVerb } from './operations/close-dart.js';
import { cutKeyholeForm, cutKeyholeVerb } from './operations/cut-keyhole.js';
import { cutKimonoForm, cutKimonoVerb } from './operations/cut-kimono.js';
import { cutLapelForm, cutLapelVerb } from './operations/cut-lapel.js';
import { cutOffBandForm, cutOffBandVerb } from './operations/cut-off-band.js';
import { cutRaglanForm, cutRaglanVerb } from './operations/cut-raglan.js';
import { divideForm, divideVerb } from './operations/divide.js';
import { divideSleeveForm, divideSleeveVerb } from './operations/divide-sleeve.js';
import { draftCircleSkirtForm, draftCircleSkirtVerb } from './operations/draft-circle-skirt.js';
import { draftFlounceForm, draftFlounceVerb } from './operations/draft-flounce.js';
import { draftGodetForm, draftGodetVerb } from './operations/draft-godet.js';
import { draftShawlCollarForm, draftShawlCollarVerb } from './operations/draft-shawl-collar.js';
import { drapeNecklineForm, drapeNecklineVerb } from './operations/drape-neckline.js';
import { foldToSeamForm, foldToSeamVerb, seamToFoldForm, seamToFoldVerb } from './operations/fold-to-seam.js';
import { joinDartsForm, joinDartsVerb } from './operations/join-darts.js';
import { joinPiecesForm, joinPiecesVerb } from './operations/join-pieces.js';
import { levelHemForm, levelHemVerb } from './operations/level-hem.js';
import { matchEdgeForm, matchEdgeVerb } from './operations/match-edge.js';
import { moveDartForm, moveDartVerb } from './operations/move-dart.js';
import { moveDartPointForm, moveDartPointVerb } from './operations/move-dart-point.js';
import { moveSeamForm, moveSeamVerb } from './operations/move-seam.js';
import { openDartForm, openDartVerb } from './operations/open-dart.js';
import { pinchOutForm, pinchOutVerb } from './operations/pinch-out.js';
import { raiseNecklineForm, raiseNecklineVerb } from './operations/raise-neckline.js';
import { recutArmholeForm, recutArmholeVerb } from './operations/recut-armhole.js';
import { recutEdgeForm, recutEdgeVerb } from './operations/recut-edge.js';
import { recutNecklineForm, recutNecklineVerb } from './operations/recut-neckline.js';
import { refreshForm, refreshVerb } from './operations/refresh.js';
import { removePieceForm, removePieceVerb } from './operations/remove-piece.js';
import { resizeDartForm, resizeDartVerb } from './operations/resize-dart.js';
import { separatePairForm, separatePairVerb } from './operations/separate-pair.js';
import { setAllowanceForm, setAllowanceVerb } from './operations/set-allowance.js';
import { setSeamForm, setSeamVerb } from './operations/set-seam.js';
import { shapeHemForm, shapeHemVerb } from './operations/shape-hem.js';
import { shapeSleeveForm, shapeSleeveVerb } from './operations/shape-sleeve.js';
import { shareDartForm, shareDartVerb } from './operations/share-dart.js';
import { lengthenForm, lengthenVerb, shortenForm, shortenVerb } from './operations/shorten.js';
import { slashForm, slashVerb } from './operations/slash.js';
import { spreadForm, spreadVerb } from './operations/spread.js';
import { letOutForm, letOutVerb, takeInForm, takeInVerb } from './operations/take-in.js';
import { trueDartForm, trueDartVerb } from './operations/true-dart.js';
import { trueForm, trueVerb } from './operations/true-edges.js';
import { unfoldForm, unfoldVerb } from './operations/unfold.js';
import { walkCapForm, walkCapVerb } from './operations/walk-cap.js';
import { wrapOverForm, wrapOverVerb } from './operations/wrap-over.js';
import type { AnyVerb, AnyVerbForm } from './verb/form.js';

const forms = [
  shortenForm,
  lengthenForm,
  closeDartForm,
  shareDartForm,
  moveDartForm,
  joinDartsForm,
  openDartForm,
  resizeDartForm,
  moveDartPointForm,
  changeDartForm,
  pinchOutForm,
  trueDartForm,
  addContourDartForm,
  divideForm,
  cutOffBandForm,
  joinPiecesForm,
  moveSeamForm,
  foldToSeamForm,
  seamToFoldForm,
  spreadForm,
  slashForm,
  draftCircleSkirtForm,
  draftFlounceForm,
  draftGodetForm,
  leaveSlitForm,
  addVentForm,
  takeInForm,
  letOutForm,
  adjustForm,
  refitForm,
  changeCapForm,
  walkCapForm,
  shapeSleeveForm,
  bendSleeveForm,
  divideSleeveForm,
  cutRaglanForm,
  cutKimonoForm,
  recutNecklineForm,
  raiseNecklineForm,
  drapeNecklineForm,
  cutKeyholeForm,
  recutArmholeForm,
  recutEdgeForm,
  shapeHemForm,
  levelHemForm,
  matchEdgeForm,
  addButtonStandForm,
  addGrownOnFacingForm,
  wrapOverForm,
  addFlyExtensionForm,
  cutLapelForm,
  draftShawlCollarForm,
  trueForm,
  setAllowanceForm,
  setSeamForm,
  addNotchesForm,
  unfoldForm,
  separatePairForm,
  removePieceForm,
  refreshForm,
  draftBandForm,
  draftWaistbandForm,
  draftCuffForm,
  draftCasingForm,
  draftPlacketForm,
  draftFlyForm,
  draftPatchPocketForm,
  draftSeamPocketForm,
  draftSlantPocketForm,
  draftCollarForm,
  draftNotchedCollarForm,
  draftHoodForm,
  draftLiningForm,
  draftTieForm,
  draftStripForm,
  draftBindingForm,
  draftFacingForm,
  draftCombinedFacingForm,
  draftFrontFacingForm,
  draftStayForm,
  draftInterfacingForm,
] as const;

/** The trade verbs by name. */
export type VerbName = (typeof forms)[number]['verb'];

/**
 * The form of every trade verb, in the order in which a reference lists them. To add one: its file, its test, and its
 * two lines here, which the compiler holds to one another.
 */
export const verbForms: readonly AnyVerbForm[] = forms;

/** For each form, in its place, its verb. */
type DoneBy<Forms extends readonly AnyVerbForm[]> = {
  readonly [I in keyof Forms]: AnyVerb & { readonly verb: Forms[I]['verb'] };
};
const all: DoneBy<typeof forms> = [
  shortenVerb,
  lengthenVerb,
  closeDartVerb,
  shareDartVerb,
  moveDartVerb,
  joinDartsVerb,
  openDartVerb,
  resizeDartVerb,
  moveDartPointVerb,
  changeDartVerb,
  pinchOutVerb,
  trueDartVerb,
  addContourDartVerb,
  divideVerb,
  cutOffBandVerb,
  joinPiecesVerb,
  moveSeamVerb,
  foldToSeamVerb,
  seamToFoldVerb,
  spreadVerb,
  slashVerb,
  draftCircleSkirtVerb,
  draftFlounceVerb,
  draftGodetVerb,
  leaveSlitVerb,
  addVentVerb,
  takeInVerb,
  letOutVerb,
  adjustVerb,
  refitVerb,
  changeCapVerb,
  walkCapVerb,
  shapeSleeveVerb,
  bendSleeveVerb,
  divideSleeveVerb,
  cutRaglanVerb,
  cutKimonoVerb,
  recutNecklineVerb,
  raiseNecklineVerb,
  drapeNecklineVerb,
  cutKeyholeVerb,
  recutArmholeVerb,
  recutEdgeVerb,
  shapeHemVerb,
  levelHemVerb,
  matchEdgeVerb,
  addButtonStandVerb,
  addGrownOnFacingVerb,
  wrapOverVerb,
  addFlyExtensionVerb,
  cutLapelVerb,
  draftShawlCollarVerb,
  trueVerb,
  setAllowanceVerb,
  setSeamVerb,
  addNotchesVerb,
  unfoldVerb,
  separatePairVerb,
  removePieceVerb,
  refreshVerb,
  draftBandVerb,
  draftWaistbandVerb,
  draftCuffVerb,
  draftCasingVerb,
  draftPlacketVerb,
  draftFlyVerb,
  draftPatchPocketVerb,
  draftSeamPocketVerb,
  draftSlantPocketVerb,
  draftCollarVerb,
  draftNotchedCollarVerb,
  draftHoodVerb,
  draftLiningVerb,
  draftTieVerb,
  draftStripVerb,
  draftBindingVerb,
  draftFacingVerb,
  draftCombinedFacingVerb,
  draftFrontFacingVerb,
  draftStayVerb,
  draftInterfacingVerb,
];

/** Every trade verb with what it does. */
export const verbs: readonly AnyVerb[] = all;
