// What went wrong, in words for a baker: what happened, which field, and the way out.
import { Code, ConnectError } from "@connectrpc/connect";
import { BadRequestSchema, ErrorInfoSchema } from "rpc/error_details_pb";

export interface WrongField {
  field: string;
  words: string;
}

export interface Fault {
  kind: "unreached" | "busy" | "late" | "wrong" | "stale" | "key" | "role" | "missing" | "state" | "stopped" | "ours";
  title: string;
  wayOut: string;
  fields: WrongField[];
  /** What else the service told, as the current etag. */
  told: Record<string, string>;
}

const said: Record<Fault["kind"], [title: string, wayOut: string]> = {
  unreached: ["The service cannot be reached.", "Nothing that you entered is lost. Look to the connection, then try again."],
  busy: ["The service has its hands full.", "Nothing is lost. Wait a moment, then try again."],
  late: ["The time ran out before an answer was found.", "Nothing is lost. Try again, or ask for less at once."],
  wrong: ["Something in the question cannot be read.", "Mend what is named here, then ask again."],
  stale: ["Somebody else saved this formula meanwhile.", "Your grams are still here. Nothing was overwritten."],
  key: ["The key is missing or not known.", "Give a key of this kitchen."],
  role: ["This key may not do that.", "Ask the kitchen's owner for a key that may."],
  missing: ["It is not there.", "It may not be published, or its name has changed."],
  state: ["That cannot be done as things stand.", ""],
  stopped: ["Stopped.", "Ask again whenever you like."],
  ours: ["The service failed.", "Nothing that you entered is lost. Try again; if it stays so, tell whoever keeps the service."],
};

const kinds: Partial<Record<Code, Fault["kind"]>> = {
  [Code.Unavailable]: "unreached",
  [Code.ResourceExhausted]: "busy",
  [Code.DeadlineExceeded]: "late",
  [Code.InvalidArgument]: "wrong",
  [Code.AlreadyExists]: "state",
  [Code.FailedPrecondition]: "state",
  [Code.Aborted]: "stale",
  [Code.Unauthenticated]: "key",
  [Code.PermissionDenied]: "role",
  [Code.NotFound]: "missing",
  [Code.Canceled]: "stopped",
};

/** A request that never reached the service has no status of the service's, whatever the browser calls it. */
function isUnreached(fault: ConnectError): boolean {
  return fault.cause instanceof TypeError || !navigator.onLine;
}

export function faultOf(reason: unknown): Fault {
  const fault = ConnectError.from(reason);
  const kind = fault.code !== Code.Canceled && isUnreached(fault) ? "unreached" : (kinds[fault.code] ?? "ours");
  const [title, wayOut] = said[kind];
  const fields = fault.findDetails(BadRequestSchema).flatMap((one) => one.fieldViolations.map((wrong) => ({ field: wrong.field, words: wrong.description })));
  const told = Object.assign({}, ...fault.findDetails(ErrorInfoSchema).map((one) => one.metadata)) as Record<string, string>;
  // The service's own words say more where it was reached and refused.
  const isTold = ["state", "missing", "role", "key"].includes(kind) && fault.rawMessage.length > 0;
  return { kind, title, wayOut: isTold ? sentence(fault.rawMessage) : wayOut, fields, told };
}

function sentence(words: string): string {
  const text = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
