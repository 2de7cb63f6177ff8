/** The page's scripts stay as small as they have become, compressed as servers send them. */
import { expect, it } from 'vitest';
import { builtPage } from '../support/built-page.ts';
import { scriptSizes } from '../support/script-sizes.ts';

/**
 * kB (1000 bytes) of gzip. A part that grows beyond its ceiling has to give something back, or come later. The first
 * sight holds the force laws, saved fields, adjusters and refusals of springs as sold and of air, 2.6 kB, and the torque
 * arm of a shaft, 0.7, and what a step of a tyre or a chain does, 0.3. All scripts hold the list of bikes with its cards
 * and ways back, 9 kB, the files and the table of setup sheets, 1.9, the torque arm's form, 1.2, and a season's chart, 2;
 * all of these come late.
 *
 * The close-ups of a change are 3.9 kB and come late; of the first sight, the words that keep off what must be seen, and
 * the edges and hatches of the zones, are 1.4, and the way to the projector, 0.8, which is 3.2 and comes late.
 * Rider, subframe, brackets and stays are 0.9 of the first sight.
 *
 * The rows that a bike was measured by and words kept as typed are 0.8 of the first sight; their panel is 14 and the fit,
 * in a part for itself, 14.6. Both come late. Photos in that fit, with camera and offset, add 1.9 to it. The picture with
 * its clicks, loupe and search for edges, and the reading of picture files, are 11.6, what is kept of a photo and where the
 * found bike lies on it 2, and all of these come late; that photos are kept with a bike is 0.2 of the first sight.
 *
 * The button and key that print are 0.5 of the first sight; the pages to print are 5.3 and come late. What
 * keeps the page on a device is 0.1, and 0.8 that come last.
 *
 * Find a setup is 12.1 with its search, what the rider says 2.6, and the two ends 0.7. The thread that searches is 40.1: it
 * carries the core a second time, because a thread shares no script with the page, and it is fetched when a search starts.
 *
 * Tyres that give are 0.5 of the first sight, because their radii belong to every balance, and 1.7 of all scripts, with
 * the thread that searches.
 *
 * The pictures of bikes in a file of several, and all words of a sheet beside its figure in a season, are 2.4 and come late, most
 * of it in a file apart. The rows for what may touch the ground and what a travel table contradicts are 9 of all scripts.
 *
 * Many files and folders opened at once, and files that come into the store whole or not at all, are 0.7 and come late.
 *
 * Tape on tyres that give, each sunk by the load of its state, is 0.4 and comes late. A tyre that is flat before a
 * wheel lifts, and where the links are entered, are 0.2 of all scripts.
 *
 * The lessons, the view they run in and the sayings that are held against a bike are 19.5, and come late; their tab and the
 * wall’s share of a balance are 0.2 of the first sight.
 *
 * The divider, columns that fold, the ways past the bar, a theme by the system's choice and the wheel that zooms are 1.5 of
 * the first sight, which gave back why a bike cannot stand and what is shown on the side view: they come late, each in a
 * file that shares no words with the rest, which is 2.4 more of all scripts.
 * A bike's file known as one that is here, the store that was cleared, where bikes stay and a verdict by thumb are 0.9 of
 * all scripts and come late.
 *
 * Chain and Tape say why a bike cannot stand and bring those words themselves now, 0.4 beyond what a panel had. Tape shares
 * files with its photo, and files apart shrink less: 1.2 more.
 *
 * The line below the side view, with what is in the hand and what changed, is 1.4 of all scripts. It comes late with the list
 * of points on one spot and with what takes dropped files, which the first sight gave back. The list of ride states on a
 * small screen, its pop-up with files and links chosen for an arm as it hangs are 0.3 of all scripts.
 *
 * The photo under the side view is 1.3 and comes late; that something may lie there at all is 0.1 of the first sight, which
 * gave back the choice of readings. That choice and the picture of how a tape is held come in files apart, 0.5 more.
 * A height that is typed comes late too, in a file apart, which is 1.6 more of all scripts and 0.7 less of the first sight.
 *
 * Ground clearance and lean at first touch, with their points and fields, are 1.9 of the first sight. The adjusters of chain
 * and tyres, which no open group shows at first, came out of it: 4.7 less there, 4.4 more of all in files apart.
 *
 * The ± beside the readings is 2.2 with how it is worked out; 0.2 of it is in the first sight.
 *
 * The ways to lower a seat are 1.7 of all scripts and come with Find a setup. Steps of a spring in its own panel and a chain
 * that lies on its slider with the wheel hanging are 1.1. A bar tight chain, which the page warns of, shares its search with
 * Chain in a file apart, and a shorter shock, what a pair does to the axle and the main reasons of a mechanism: 2.5 in all.
 *
 * A trainer's own lessons, with their form and their file, are 8.8 of all scripts and come late. The corner's sketch, the
 * handout, the presenter's notes, the wall's arrows and one frame for both views of a room are 8.6, and come late too; names
 * that these share with the first sight are 0.1 of it.
 *
 * A lesson in a link is 3.5 of all scripts: packed and opened 0.6, sent 0.7, shown beside the user's work 1.6, and what a
 * step that this program cannot read needs 0.6. That the form of a link, the packing, and how a lesson is opened serve two
 * now lies in files apart, 2.8 more. All of it comes late; the names of those files are 0.02 of the first sight.
 *
 * One slack on tab, adjuster and sheet is 1.1, and comes late with the notes beside the adjusters, which the first sight gave back.
 *
 * A trainer's own lessons in the store of the bikes and in the file of all bikes are 1.6, and come late.
 *
 * A bike in a link is 6.8 of all scripts and comes late: packed and opened again 1.7, sent 2.1, shown beside the user's own
 * bike 1, and what keeping tells, which the first sight gave back for the button that sends, in files apart. Its code on
 * paper is 4.7 with the library that makes it. Size and line of saved pictures are 0.8.
 *
 * Cautions where hands go, in the help of adjusters and readings, and the neutral point beside the anti-squat are 0.5 of the
 * first sight.
 * What a chain left alone has for slack, the shock that clears its slider and its longer words are 1.2 of Chain, whose slack and
 * way over the pivot now come in files apart, 2 more of all scripts.
 *
 * What the first sight gave back counts with each panel that uses it: the field of a tyre's size with Tape, what is asked of
 * a chain with Chain, 3 at most.
 *
 * Setups side by side, with the shadows, the table, the curves and the steps between them, are 10 of all scripts and come
 * with Sheets. What they share with Why, Curves and the pages to print lies in files apart for it, 4.4 more. That the
 * parts of Sheets and Tape are fetched from a late file is 0.2 less of the first sight.
 *
 * Pictures that are very large, moving or see-through, and what is said of them, are 0.7 of all scripts and come with the photo.
 *
 * Teeth that are counted by the chain’s pins on a photo are 0.8 of all scripts and come with the photo.
 *
 * The pictures of Compare, with their buttons and what they share with Curves in files apart, are 2.4 and come late.
 *
 * The pace at which figures follow a hand is 0.3, and the words of the zones come in the file of the line below the side
 * view now, which shares less: 0.4 of all scripts. The first sight gave those words back.
 *
 * Pages to print that are set as roomy as one sheet allows, with the readings before the work and from where figures are
 * counted, are 1.5 of all scripts and come late.
 *
 * Ranges to widen, tyres in the search, targets open on one side, the shares of a step’s causes, and complaints and heights
 * that go on a sheet are 7 of all scripts. Codes of tyres and places that touch are remembered: 0.1 of the first sight.
 *
 * Rider says, Lower the seat and What moves what come in one file apart from Find a setup, which is 23.6 since: 2.6 more of
 * all scripts. What saves curves, the form for papers and the picture of a photo, each in a file apart, are 4.1 more of all,
 * and leave Curves at 29.6 and Photo at 29.4.
 *
 * That the adjusters name the end they lower or raise, say what the fork tubes' figure counts and run the axle's slider as
 * the bike is drawn is 0.2 of the first sight: it stands in the first group that is open. The points that are open before
 * the bike goes out are 1.2 of all scripts and come late.
 *
 * The band along a curve, the ellipses of points and what asks for them are 3.2 of all scripts, 0.3 of them in the first
 * sight. They are worked out in the thread that searches, which has grown from 40 to 62 with the fit of tape and photo:
 * a thread shares no script with the page.
 *
 * A picture less high, readings in one line and the chain’s slack of now on a tight printed page are 0.6 of all scripts; a
 * free travel named by its drive is 0.1 of the first sight.
 *
 * Circles in metres are 0.1 of all scripts; 0.2 is left, because names of late files change what compresses.
 *
 * That a machine is made part by part, so that a search for a setup keeps those that no turn has changed, is 0.3 of the first
 * sight and 1.4 of all scripts: the thread that searches has the core once more.
 *
 * Close-ups that find a place off the bike are 0.9 of all scripts and come late; that a change may stand behind its
 * figure, and that the zones' names keep their place, is 0.1 of the first sight.
 * These and the word left off a change that nobody notices are 0.3 of the first sight together.
 *
 * That a search for a setup is shared among threads and names the adjuster to allow is 2.2 of all scripts, 0.8 of them in
 * the thread.
 *
 * A change told to be read out, both ends' heights at once and warnings of other ride states are 2.8 of all scripts and come
 * late; with them comes what warns, which the first sight gave back, 1.9.
 *
 * The ± where springs carry the bike, on setup sheets and in their table, of what may touch the ground and of a row of the
 * travel table that the others contradict, and the usual rows of a sheet are 1.6 of all scripts; the thread that works out
 * every ± has the core once more.
 *
 * The setups to aim at come apart with those of Compare, the step that sets the slack with the pages to print: 4.2 of all.
 *
 * A field kept above a screen's keyboard, broader lines for a room, close-ups that find room in pairs and a travel table
 * that leaves the arm where its links had it are 1.2 of all scripts and come late.
 */
const CEILINGS = { firstSight: 142.2, all: 604.7, panel: 30.1 };
/** What paints where no thread can, and makes pictures to save: one library, and no panel. */
const NO_PANELS = ['konva-canvas.ts', 'save-picture.ts'];

it('R17: scripts before the first sight, all scripts and each later panel keep below their ceilings', async () => {
  const page = await builtPage();
  try {
    const { firstSight, all, late } = scriptSizes(page);
    expect(firstSight).toBeLessThanOrEqual(CEILINGS.firstSight);
    expect(all).toBeLessThanOrEqual(CEILINGS.all);
    const panels = late.filter(({ name }) => !NO_PANELS.includes(name));
    expect(panels.length).toBeGreaterThanOrEqual(7);
    expect(panels.filter(({ size }) => size > CEILINGS.panel)).toEqual([]);
  } finally {
    page.remove();
  }
}, 300_000);
