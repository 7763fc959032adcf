import type { Batch } from "@partsproof/house/protocol";

/**
 * The number of a batch as a label bears it: its day and the end of its id, "261125-HB7K". It stays when other batches are undone, and two
 * batches of one day differ.
 */
export const batchNumber = ({ id, madeAt }: Pick<Batch, "id" | "madeAt">): string =>
  `${madeAt.slice(2, 10).replaceAll("-", "")}-${id.slice(-4).toUpperCase()}`;
