/** Tests of snapping a dragged place. */
import { expect, it } from 'vitest';
import { SNAP_REACH_MM, SNAP_REACH_PX, snapPlace } from './snap.ts';

it('a place far from every other point goes to whole millimetres, without a guide', () => {
  const found = snapPlace({ x: 100.4, y: -0.3 }, [{ x: 500.7, y: 300.2 }], 1, true);
  expect(found).toEqual({ place: { x: 100, y: 0 }, guides: [] });
});

it('a place nearly plumb with a point is put plumb with it, and a guide says so', () => {
  const other = { x: 98.25, y: 300 };
  const found = snapPlace({ x: 100.4, y: 50.4 }, [other], 1, true);
  expect(found.place).toEqual({ x: 98.25, y: 50 });
  expect(found.guides).toEqual([{ from: other, to: found.place }]);
});

it('a place may be plumb with one point and level with another', () => {
  const above = { x: 98.25, y: 300 };
  const beside = { x: 900, y: 52.5 };
  const found = snapPlace({ x: 100.4, y: 50.4 }, [above, beside], 1, true);
  expect(found.place).toEqual({ x: 98.25, y: 52.5 });
  expect(found.guides.map((guide) => guide.from)).toEqual([above, beside]);
});

it('of several points the nearest in the coordinate wins', () => {
  const found = snapPlace(
    { x: 100, y: 0 },
    [
      { x: 102.5, y: 300 },
      { x: 98.5, y: 900 },
    ],
    1,
    true,
  );
  expect(found.place.x).toBe(98.5);
});

it('reach is 6 px of the screen, and on a small drawing never more than 3 mm of the bike', () => {
  const other = { x: 0.25, y: 300 };
  const at = (mm: number, scale: number) =>
    snapPlace({ x: 0.25 + mm, y: 0 }, [other], scale, true).guides.length;
  for (const scale of [8, 4]) {
    expect(at(SNAP_REACH_PX / scale, scale)).toBe(1);
    expect(at(SNAP_REACH_PX / scale + 0.01, scale)).toBe(0);
  }
  for (const scale of [1, 0.2, 0.05]) {
    expect(at(SNAP_REACH_MM, scale)).toBe(1);
    expect(at(SNAP_REACH_MM + 0.01, scale)).toBe(0);
  }
});

it('a place stays where it is while snapping is off', () => {
  const place = { x: 100.43, y: 50.41 };
  expect(snapPlace(place, [{ x: 100, y: 50 }], 1, false)).toEqual({ place, guides: [] });
});
