/** What a bike has that some adjusters need. */
import type { Bike } from '../../parts/bike.ts';
import { hasRuns } from '../../parts/drive-kind.ts';
import type { Support } from '../../parts/support.ts';

export const onRuns = ({ drive }: Bike): boolean => hasRuns(drive.kind);

/** Whether the main spring has a rate: a table has its forces instead, and air alone has no spring. */
const hasRate = (support: Support | null): boolean =>
  support === null || (support.spring.kind !== 'table' && support.spring.kind !== 'none');
const hasSpring = (support: Support | null): boolean => support === null || support.spring.kind !== 'none';
const hasAir = (support: Support | null): boolean => support !== null && support.air !== null;

export const onForkRate = ({ fork }: Bike): boolean => hasRate(fork.support);
export const onShockRate = ({ shock }: Bike): boolean => hasRate(shock.support);
export const onForkSpring = ({ fork }: Bike): boolean => hasSpring(fork.support);
export const onShockSpring = ({ shock }: Bike): boolean => hasSpring(shock.support);
export const onForkAir = ({ fork }: Bike): boolean => hasAir(fork.support);
export const onShockAir = ({ shock }: Bike): boolean => hasAir(shock.support);

export const onLinks = ({ swingarm }: Bike): boolean => swingarm.links !== null;
