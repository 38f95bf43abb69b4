/**
 * The front door of the trade's knowledge: pure, without network, files or database, so that a browser can load it.
 * Documents come in by `intake/` and `worker.ts`, which a page never loads.
 */

export type { CategoryDefinition, Dimension, PublishedSize } from './categories/definition.ts';
export type { DimensionLine, Drawing, Path, Point, Stroke, View } from './categories/drawing.ts';
export { categories } from './categories/index.ts';
export type { Measurable } from './categories/measurable.ts';
export type { Tool } from './categories/tool.ts';
export {
  type Compared,
  compareArticles,
  compareSizes,
  type DimensionDifference,
  nearness,
} from './compare.ts';
export { type Duty, duties, isCritical } from './duty.ts';
export { proposeDuty } from './duty-words.ts';
export { fit } from './fit.ts';
export type { FitAnswer, FitCandidate, FitRequest } from './fitting/answer.ts';
export type { FitOf } from './fitting/clearance.ts';
export type { Seat } from './fitting/seat.ts';
export type { ShimAnswer } from './fitting/shims.ts';
export {
  bankCardWidth,
  checkBar,
  type Gauge,
  gaugeSheetEnds,
  gaugeSheets,
  pixelsPerMillimetre,
} from './gauge-sheet.ts';
export { type Lesson, learn, lessonOf, type Said } from './like-lines.ts';
export {
  BadMeasurement,
  type CandidateAnswer,
  type Instrument,
  type KnownSize,
  type MeasureAnswer,
  type Measurement,
  type MeasureRequest,
  measurablesOf,
  measure,
  measuredCategories,
  type NextMeasurement,
  type TakenAs,
} from './measure.ts';
export { gaugeOf } from './measuring/gauge-of.ts';
export { labelOf as instrumentLabel } from './measuring/instruments.ts';
export { easilyConfused, type Neighbourhood, neighbourhoodOf } from './near.ts';
export { foldNumber } from './part-number.ts';
export { read } from './read.ts';
export {
  type Alternative,
  type Attrs,
  type CategoryName,
  categoryNames,
  type Dims,
  type LineContext,
  type ReadAs,
  type Reading,
  type Span,
} from './reading/reading.ts';
export { designationsOf, openOf, parseSize, type Size, toolsOf, writeItem, writeSize } from './size.ts';
export { playGroups } from './standards/iso-5753.ts';
export { type PartOfMachine, type ToolsNeeded, toolsNeeded } from './tools-needed.ts';
