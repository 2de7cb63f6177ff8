/** Tests of the notices between tabs. */
import { expect, it } from 'vitest';
import { TabNotices, type Channel, type TabNotice } from './tab-notices.ts';

/** Channels that hear one another and not themselves, as the browser's do. */
function channels(): () => Channel {
  const all: Channel[] = [];
  return () => {
    const channel: Channel = {
      onmessage: null,
      postMessage: (data) => {
        if (!all.includes(channel)) throw new Error('the channel is closed');
        const event = new MessageEvent('message', { data });
        all.filter((each) => each !== channel).forEach((each) => each.onmessage?.(event));
      },
      close: () => {
        all.splice(all.indexOf(channel), 1);
      },
    };
    all.push(channel);
    return channel;
  };
}

function listening(channel: Channel | null, id: string, writer: string) {
  const heard: TabNotice[] = [];
  return { tab: new TabNotices(channel, id, writer, (notice) => heard.push(notice)), heard };
}

it('tells both tabs that the other has the same bike open, each once', () => {
  const make = channels();
  const first = listening(make(), 'bike', 'a');
  const second = listening(make(), 'bike', 'b');
  expect(first.heard).toEqual([{ kind: 'openElsewhere' }]);
  expect(second.heard).toEqual([{ kind: 'openElsewhere' }]);
});

it('says nothing of other bikes', () => {
  const make = channels();
  const first = listening(make(), 'bike', 'a');
  const second = listening(make(), 'other', 'b');
  second.tab.saved(3, 7);
  expect([first.heard, second.heard]).toEqual([[], []]);
});

it('tells the other tab of a save, and none that has closed', () => {
  const make = channels();
  const first = listening(make(), 'bike', 'a');
  const second = listening(make(), 'bike', 'b');
  second.tab.saved(3, 7);
  expect(first.heard.at(-1)).toEqual({ kind: 'savedElsewhere', revision: 3, savedAt: 7 });
  first.tab.close();
  second.tab.saved(4, 8);
  expect(first.heard).toHaveLength(2);
});

it('tells the other tab when it leaves the bike, and is silent from then on', () => {
  const make = channels();
  const first = listening(make(), 'bike', 'a');
  const second = listening(make(), 'bike', 'b');
  second.tab.close();
  second.tab.saved(4, 8);
  second.tab.close();
  expect(first.heard).toEqual([{ kind: 'openElsewhere' }, { kind: 'leftElsewhere' }]);
});

it('takes no notice of messages that it does not know', () => {
  const make = channels();
  const { heard } = listening(make(), 'bike', 'a');
  const other = make();
  for (const odd of [null, 'x', {}, { kind: 'saved', id: 'bike', writer: 'b' }, { kind: 'new', id: 'bike' }])
    other.postMessage(odd);
  expect(heard).toEqual([]);
});

it('works alone in a browser without channels', () => {
  const { tab, heard } = listening(null, 'bike', 'a');
  tab.saved(1, 1);
  tab.close();
  expect(heard).toEqual([]);
});
