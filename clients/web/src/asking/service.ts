// One way to the service: gRPC-Web on the page's own origin, with the kitchen's key where there is one.
import { createClient, type Interceptor } from "@connectrpc/connect";
import { createGrpcWebTransport } from "@connectrpc/connect-web";
import { BakingService } from "contract/baking_service_pb";
import { BalanceService } from "contract/balance_service_pb";
import { CardService } from "contract/card_service_pb";
import { FormulaService } from "contract/formula_service_pb";
import { IngredientService } from "contract/ingredient_service_pb";
import { MeasureService } from "contract/measure_service_pb";
import { ReformulationService } from "contract/reformulation_service_pb";
import { SubstitutionService } from "contract/substitution_service_pb";
import { TrialService } from "contract/trial_service_pb";
import { keyOfThisTab } from "./key";

/** Longest wait for one answer [ms]; the service has its own, shorter limit. */
const longestWait = 90_000;

const withKey: Interceptor = (next) => (request) => {
  const key = keyOfThisTab();
  if (key) {
    request.header.set("authorization", `Bearer ${key}`);
  }

  return next(request);
};

const transport = createGrpcWebTransport({ baseUrl: window.location.origin, interceptors: [withKey], defaultTimeoutMs: longestWait });

export const baking = createClient(BakingService, transport);
export const balances = createClient(BalanceService, transport);
export const cards = createClient(CardService, transport);
export const formulas = createClient(FormulaService, transport);
export const ingredients = createClient(IngredientService, transport);
export const measures = createClient(MeasureService, transport);
export const reformulations = createClient(ReformulationService, transport);
export const substitutions = createClient(SubstitutionService, transport);
export const trials = createClient(TrialService, transport);
