// Moments as the service tells them, in the reader's own day.
import type { Timestamp } from "@bufbuild/protobuf/wkt";

export function dayOf(moment: Timestamp | undefined): string {
  return moment === undefined ? "" : new Date(Number(moment.seconds) * 1000).toLocaleDateString(undefined, { dateStyle: "medium" });
}
