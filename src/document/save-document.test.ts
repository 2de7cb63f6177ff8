/** Tests of saving: what is saved opens again as the same document. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../tests/support/cases.ts';
import plain from '../../fixtures/bikes/plain.json';
import { BIKE_PART } from './fields/bike-fields.ts';
import { SCHEMA, type BikeDocument, type BikeWithSetup } from './document.ts';
import { anyPart, type AnyField } from './fields/field.ts';
import { openDocument } from './open-document.ts';
import { openJson } from './open-json.ts';
import { sameValue } from './same-document.ts';
import { saveDocument } from './save-document.ts';
import { SETUP_PART } from './fields/setup-fields.ts';

const withoutSign = (value: number): number => (value === 0 ? 0 : value);
const size = fc.double({ min: 0, max: 100_000, noNaN: true }).map(withoutSign);

/** A record as JSON gives one, never without a prototype. */
const plainRecord = (fields: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<unknown> =>
  fc.record(fields, { noNullPrototype: true });

const framePoint = plainRecord({ x: size, y: size });
const armPoint = plainRecord({ along: size, above: size });
const drawn = {
  drawnAngleDeg: fc.double({ min: -180, max: 180, noNaN: true }).map(withoutSign),
  framePitchDeg: fc.double({ min: -180, max: 180, noNaN: true }).map(withoutSign),
  shock: plainRecord({ fullLength: size, closedLength: size }),
};
const farEnd = fc.oneof(
  plainRecord({ on: fc.constant('frame'), at: framePoint }),
  plainRecord({ on: fc.constant('arm'), at: armPoint }),
);
/** Every layout that a file can hold; whether it works is not for the file to judge. */
const anyLinks = fc.oneof(
  fc.constant(null),
  plainRecord({ kind: fc.constant('direct'), ...drawn, shockOnFrame: framePoint, shockOnArm: armPoint }),
  plainRecord({
    kind: fc.constant('rockerOnFrame'),
    ...drawn,
    rockerPivot: framePoint,
    rodOnRocker: framePoint,
    shockOnRocker: framePoint,
    rodOnArm: armPoint,
    shockFarEnd: farEnd,
  }),
  plainRecord({
    kind: fc.constant('rockerOnArm'),
    ...drawn,
    rockerPivot: armPoint,
    rodOnRocker: armPoint,
    shockOnRocker: armPoint,
    rodOnFrame: framePoint,
    shockFarEnd: farEnd,
  }),
);

const rate = size;
const pressure = fc.double({ min: -1000, max: 1000, noNaN: true }).map(withoutSign);
const force = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map(withoutSign);
const kind = (name: string, rest: Record<string, fc.Arbitrary<unknown>> = {}): fc.Arbitrary<unknown> =>
  plainRecord({ kind: fc.constant(name), ...rest });
/** Every spring and all air that a file can hold. */
const anySupport = {
  spring: fc.oneof(
    kind('oneRate'),
    kind('inSeries', { otherRate: rate, firstCloses: fc.option(size), otherCloses: fc.option(size) }),
    kind('twoRates', { secondRate: rate, changeover: size }),
    kind('table', {
      rows: fc.array(plainRecord({ pressed: size, force }), { minLength: 2, maxLength: 9 }),
    }),
    kind('none'),
  ),
  air: fc.option(
    plainRecord({
      bore: size,
      slidingTube: size,
      exponent: fc.double({ min: 0, max: 10, noNaN: true }).map(withoutSign),
      steelVolume: size,
      balance: fc.option(plainRecord({ volume: size, bore: size, rod: size, pressure })),
    }),
  ),
};
const anyOtherLeg = plainRecord({
  rate,
  preload: size,
  springTravel: fc.option(size),
  airGap: size,
  airPressure: pressure,
  ...anySupport,
});

/** Anything that a field accepts, made from the field itself. */
function anyOf(field: AnyField): fc.Arbitrary<unknown> {
  if (field.kind === 'part')
    return plainRecord(
      Object.fromEntries(Object.entries(field.fields).map(([key, each]) => [key, anyOf(each)])),
    );
  const { bounds, json } = field;
  if (bounds !== null) {
    const { least: min, most: max } = bounds;
    const number = bounds.whole
      ? fc.integer({ min, max })
      : fc.double({ min, max, noNaN: true }).map(withoutSign);
    return bounds.mayBeNone ? fc.option(number) : number;
  }
  if (Array.isArray(json.enum)) return fc.constantFrom(...json.enum);
  if (json.type === 'boolean') return fc.boolean();
  if (json.type === 'string') return fc.string({ unit: 'grapheme', maxLength: 40 });
  if (field.shape === 'links') return anyLinks;
  if (field.shape === 'support') return fc.option(plainRecord(anySupport));
  if (field.shape === 'otherLeg') return fc.option(anyOtherLeg);
  if (field.words === 'gear ratios')
    return fc.array(fc.double({ min: 0.1, max: 20, noNaN: true }), { maxLength: 12 });
  if (field.shape === 'travelTable')
    return fc.array(plainRecord({ wheelTravel: size, shockStroke: size }), { minLength: 2 });
  return fc.oneof(
    plainRecord({ code: fc.string({ maxLength: 60 }) }),
    plainRecord({ diameter: size }),
    plainRecord({ circumference: size }),
  );
}

const asSet = plainRecord({
  bike: anyOf(anyPart(BIKE_PART)),
  setup: anyOf(anyPart(SETUP_PART)),
}) as fc.Arbitrary<BikeWithSetup>;

const documents: fc.Arbitrary<BikeDocument> = fc
  .tuple(asSet, asSet)
  .map(([own, baseline]) => ({ format: 'sidestance-bike', schema: SCHEMA, ...own, baseline }));

describe('saving a document', () => {
  it('and opening it again gives the same document, every digit of it, without a repair', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const opened = openDocument(saveDocument(document));
        if (!opened.ok) throw new Error(opened.reason.sentence);
        expect(opened.value.repairs).toEqual([]);
        expect(opened.value.document).toStrictEqual(document);
        expect(sameValue(opened.value.document, document)).toBe(true);
      }),
    );
  });

  it('writes the same text whatever order the fields came in, ending with a line end', () => {
    const opened = openJson(plain);
    if (!opened.ok) throw new Error(opened.reason.sentence);
    const { document } = opened.value;
    const turned = (value: unknown): unknown =>
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([key, each]) => [key, turned(each)]),
          )
        : value;
    const text = saveDocument(document);
    expect(saveDocument(turned(document) as BikeDocument)).toBe(text);
    expect(
      text.startsWith(`{\n  "format": "sidestance-bike",\n  "schema": ${SCHEMA},\n  "bike": {\n    "name"`),
    ).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('saves inputs only', () => {
    const opened = openJson(plain);
    if (!opened.ok) throw new Error(opened.reason.sentence);
    const withResult = { ...opened.value.document, trail: 96.4 };
    expect(saveDocument(withResult)).not.toContain('trail');
  });
});
