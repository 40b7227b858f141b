import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { FunctionGroup } from "../../taskpane/reference";
import { NAMESPACE } from "../edit/namespace";

/** The function list as the build reads it from the doc comments, and puts in place of this name. */
declare const FUNCTION_REFERENCE: FunctionGroup[];

/** What the formula bar offers and explains. */
export const functionDescriptions = (): IFunctionInfo[] =>
  FUNCTION_REFERENCE.flatMap(({ functions }) =>
    functions.map(({ name, description, parameters }) => ({
      functionName: `${NAMESPACE}.${name}`,
      functionType: FunctionType.User,
      description,
      abstract: description,
      functionParameter: parameters.map((parameter) => ({
        name: parameter.name,
        detail: parameter.description,
        example: "",
        require: parameter.optional ? 0 : 1,
        repeat: 0,
      })),
    })),
  );
