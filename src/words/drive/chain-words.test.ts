/** Tests of what the Chain panel says. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { chainWear } from '../../core/drive/chain-wear.ts';
import type { GuideClearance } from '../../core/chain/guide-clearance.ts';
import type { SlackToSet } from '../../core/chain/slack-to-set.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import {
  asBeforeWords,
  clearanceWords,
  lowerClearanceWords,
  exactLinksText,
  misfitWords,
  noSlackToSetWords,
  noSlackWords,
  placeWords,
  rubbingWords,
  slackNowNote,
  slackNowPrinted,
  slackWords,
  toSetWords,
  wearDone,
  wearRefusal,
  wearWords,
} from './chain-words.ts';
import { noChainWords } from '../trouble/no-chain-words.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const inches: NumberStyle = { system: 'inch', decimal: ',' };
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('chains and places', () => {
  it('links are written to a hundredth, with the user’s decimal sign', () => {
    expect(exactLinksText(111.384, style)).toBe('111.38');
    expect(exactLinksText(112, inches)).toBe('112,00');
  });

  it('a place is written with the way there, in inches for those who use them', () => {
    const place = { ok: true, links: 112, axlePosition: 25.4, residual: 0 } as const;
    expect(plain(placeWords(place, 20.4, style))).toBe('axle at 25.4 mm, 5.0 mm back');
    expect(plain(placeWords(place, 26.4, style))).toBe('axle at 25.4 mm, 1.0 mm forward');
    expect(plain(placeWords(place, 25.41, style))).toBe('axle at 25.4 mm, where it stands');
    expect(plain(placeWords(place, 0, inches))).toBe('axle at 1,00 in, 1,00 in back');
  });

  it('the sentence for a chain that does not fit says where the axle would be', () => {
    const misfit = {
      ok: false,
      reason: 'chainTooShort',
      links: 110,
      axlePosition: -3,
      nearest: [112],
      slot: 40,
    } as const;
    expect(plain(misfitWords(misfit, style))).toBe('too short: axle 3.0 mm ahead of its slot');
    expect(misfitWords({ ...misfit, axlePosition: null }, style)).toBe(
      'too short: it does not reach the slot',
    );
    const long = { ...misfit, reason: 'chainTooLong', axlePosition: 45.5 } as const;
    expect(plain(misfitWords(long, style))).toBe('too long: axle 5.5 mm behind its slot');
    expect(misfitWords({ ...long, axlePosition: null }, style)).toBe('too long: it does not reach the slot');
    expect(misfitWords({ ...misfit, reason: 'linksImpossible', links: 111 }, style)).toMatch(
      /needs a half link/,
    );
  });

  it('the sentence for no chain gives its reason', () => {
    expect(noChainWords({ ok: false, reason: 'slackImpossible' }, CHAIN, style)).toMatch(
      /cannot have this much slack\. Set less/,
    );
    expect(
      noChainWords({ ok: false, reason: 'sprocketsOverlap', found: 100, limit: 150 }, CHAIN, style),
    ).toMatch(/sprockets overlap/);
  });
});

describe('slack', () => {
  const at = { ok: true, rearTravel: 40, onGuide: false, underGuide: false } as const;

  it('is written up and down together, or as how much too short the chain is', () => {
    const slack = { ok: true, up: 9.9, down: 10.2, total: 20.1 } as const;
    expect(plain(slackWords({ ...at, spare: 0.4, slack }, style))).toBe('20.1 mm up and down');
    const none = { ok: false, reason: 'tooTight', spare: -2.25 } as const;
    expect(plain(slackWords({ ...at, spare: -2.25, slack: none }, style))).toBe(
      'too tight: the chain is 2.3 mm too short',
    );
    const bag = { ok: false, reason: 'tooSlack', spare: 300 } as const;
    expect(plain(slackWords({ ...at, spare: 300, slack: bag }, style))).toBe(
      'too slack: the chain is 300.0 mm too long',
    );
    expect(noSlackWords({ ok: false, reason: 'underGuide', spare: 4 }, 4, style)).toBe(
      'it lies under the chain slider at the pivot, so there is no one curve to draw; the slack figures count the slider',
    );
  });

  const set: SlackToSet = {
    ok: true,
    tightest: { ok: true, rearTravel: 43, links: 112, found: 'inLine' },
    axlePosition: 18.1,
    inSlot: true,
    slack: { ok: true, up: 12, down: 12.8, total: 24.8 },
    leastSlack: 10,
  };

  it('to set comes with the slack at the tightest place and with the axle’s place, in its slot or outside', () => {
    expect(plain(toSetWords(set, 24.8, 40, style))).toBe(
      'To keep 10.0 mm at its tightest place, set 24.8 mm with the wheel hanging. The axle then stands 18.1 mm back in its slot.',
    );
    expect(plain(toSetWords({ ...set, axlePosition: -3, inSlot: false }, 24.8, 40, style))).toMatch(
      /the axle would stand 3\.0 mm ahead of its slot\.$/,
    );
    expect(plain(toSetWords({ ...set, axlePosition: 44, inSlot: false }, 24.8, 40, style))).toMatch(
      /the axle would stand 4\.0 mm behind its slot\.$/,
    );
  });

  it('of a chain left alone since the baseline is that of now, with what it was and what to set', () => {
    const hanging = {
      ...at,
      rearTravel: 0,
      spare: 1,
      slack: { ok: true, up: 19, down: 19.7, total: 38.7 },
    } as const;
    expect(plain(asBeforeWords(hanging, 30, style))).toBe(
      'Nobody has set the chain since the baseline. Its slack with the wheel hanging was 30.0 mm then, now it is 38.7 mm. Do not set it back to 30.0 mm.',
    );
    expect(plain(slackNowNote(38.7, 30, style) ?? '')).toMatch(
      /has 38\.7 mm with the wheel hanging: see Chain/,
    );
    expect(slackNowNote(30, 30.01, style)).toBeNull();
    expect(plain(slackNowPrinted(38.7, 30, style) ?? '')).toBe('38.7 mm, wheel hanging');
    expect(slackNowPrinted(30, 30.01, style)).toBeNull();
  });

  it('that cannot be set has its reason in words', () => {
    for (const [reason, words] of [
      ['chainDoesNotReach', /does not reach the slot/],
      ['tooSlack', /Keep less/],
      ['tooTight', /too short/],
      ['notConverged', /No slack/],
      ['swingarmCannotReach', /swingarm cannot reach/],
    ] as const)
      expect(noSlackToSetWords({ ok: false, reason }, style)).toMatch(words);
  });
});

describe('wear', () => {
  const wear = (length: number, limit = 3) => {
    const found = chainWear({ links: 20, length }, 15.875, limit);
    if (!found.ok) throw new Error(found.reason);
    return found.value;
  };

  it('is judged by the maker’s limit alone, and without it has no verdict', () => {
    expect(plain(wearWords(wear(322), false, style))).toBe(
      '1.4 % longer than new. Type the limit of the maker’s manual to see whether it is worn out: limits differ from chain to chain.',
    );
    expect(plain(wearWords(wear(322, 1), true, style))).toBe(
      '1.4 % longer than new, beyond the maker’s limit of 1.0 %: this chain is worn out. Do not ride: it can jump or break. Replace it together with both sprockets.',
    );
    expect(plain(wearWords(wear(322, 2), true, style))).toMatch(
      /^1\.4 % longer than new, within the maker’s limit of 2\.0 %, which is [\d.]+ mm over these links\.$/,
    );
    expect(wearDone({ ok: true, value: wear(330) }, false)).toBe(false);
    expect(wearDone({ ok: true, value: wear(330, 2) }, true)).toBe(true);
  });

  it('below nothing is a chain that was not pulled tight', () => {
    expect(plain(wearWords(wear(316), false, style))).toMatch(/^0\.5 % shorter than new, which cannot be/);
  });

  it('of absurd figures is refused with what would be right', () => {
    const measured = { links: 20, length: 400 };
    expect(plain(wearRefusal('lengthImpossible', measured, 15.875, style))).toBe(
      '20 links are 317.5 mm long when new, so this cannot be their length. 400.0 mm would be about 25 links.',
    );
    expect(plain(wearRefusal('lengthImpossible', { links: 20, length: 0 }, 15.875, style))).not.toMatch(
      /about/,
    );
    expect(wearRefusal('linksImpossible', measured, 15.875, style)).toMatch(/one link or more/);
    expect(wearRefusal('limitImpossible', measured, 15.875, style)).toMatch(/more than 0/);
  });
});

describe('the clearance to the chain slider', () => {
  const clearance: GuideClearance = {
    ok: true,
    rearTravel: [0, 130],
    gap: [15, 30],
    leastGap: 15,
    leastAt: 0,
    touching: [],
  };

  it('names its least and where that is', () => {
    expect(plain(clearanceWords(clearance, true, 130, style))).toBe(
      'The upper run stays clear: least clearance 15.0 mm with the wheel hanging, to the chain slider [rub strip].',
    );
    expect(plain(clearanceWords({ ...clearance, leastAt: 130 }, false, 130, style))).toMatch(
      /with the wheel bottomed, to the pivot’s centre; this bike has no chain slider \[rub strip\]\.$/,
    );
    expect(plain(clearanceWords({ ...clearance, leastGap: -4, leastAt: 40 }, false, 130, style))).toMatch(
      /^The upper run passes 4\.0 mm below the pivot’s centre/,
    );
  });

  it('a sentence says whether the lower run is clear or pulled tight under the pivot', () => {
    const none: GuideClearance = {
      ok: true,
      rearTravel: [],
      gap: [],
      leastGap: 12.4,
      leastAt: 130,
      touching: [],
    };
    expect(plain(lowerClearanceWords(none, 130, style))).toBe(
      'The lower run stays 12.4 mm clear under the pivot with the wheel bottomed.',
    );
    const some = { ...none, leastGap: -3, leastAt: 90, touching: [{ from: 60, to: 130 }] };
    expect(plain(lowerClearanceWords(some, 130, style))).toBe(
      'Pulled tight, the lower run lies on the chain slider [rub strip] under the pivot from 60.0 mm of rear travel to bottomed. Without the slider it would pass 3.0 mm above its surface at 90.0 mm of rear travel.',
    );
  });

  it('closed names the travel over which the chain lies on the guide', () => {
    const words = (from: number, to: number): string =>
      plain(
        clearanceWords(
          { ...clearance, leastGap: -11.8, leastAt: 40, touching: [{ from, to }] },
          true,
          130,
          style,
        ),
      );
    expect(words(0, 98)).toBe(
      'The chain lies on the chain slider [rub strip] from hanging to 98.0 mm of rear travel. Without the slider the chain would pass 11.8 mm below its surface at 40.0 mm of rear travel.',
    );
    expect(words(0, 130)).toMatch(/chain slider \[rub strip\] through the whole travel\./);
    expect(words(20, 98)).toMatch(/chain slider \[rub strip\] from 20\.0 mm to 98\.0 mm of rear travel\./);
    expect(words(20, 130)).toMatch(/chain slider \[rub strip\] from 20\.0 mm of rear travel to bottomed\./);
  });

  it('closed says what that does', () => {
    expect(plain(rubbingWords(26.2, 38, 433.6, style))).toBe(
      'Where it presses hardest: when the tyre drives with 1000 N, the chain presses on its slider with 434 N, and both wear. The slider holds the chain 38.0 mm above the pivot’s centre; straight, the chain would pass only 26.2 mm above it. The higher it passes, the harder it pulls the rear down.',
    );
    expect(plain(rubbingWords(-3, 38, 900, style))).toMatch(
      /straight, the chain would pass 3\.0 mm below it\. /,
    );
  });
});
