/**
 * A batch of the platform's object protocol, as its runtime sends it: objects named by paths, and what to do with
 * them. The names of members are those of the wire, with a capital.
 */
export interface Batch {
  Actions: readonly Action[];
  ObjectPaths?: Readonly<Record<string, Path>>;
}

interface Action {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: Arguments;
  QueryInfo?: Query;
}

/** An object among them stands as its path's number, which is told a second time. */
interface Arguments {
  Arguments?: readonly unknown[];
  ReferencedObjectPathIds?: readonly (number | null)[];
}

interface Path {
  ObjectPathType: number;
  Name?: string;
  ParentObjectPathId?: number;
  ArgumentInfo?: Arguments;
}

interface Query {
  Select?: readonly string[];
}

/** What the program refuses with; `code` is the platform's. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** An object of the program: its members are those of the wire. */
export type Remote = object & { Items?: readonly Remote[] };

/** Answers one batch, action by action, as the program does; one refusal ends it. */
export class Answerer {
  private readonly references = new Map<string, Remote>();

  /** @param root what paths begin with, by the name of the class; "" is the workbook's root */
  constructor(private readonly root: (name: string) => Remote) {}

  answer(batch: Batch): object {
    const objects = new Map<number, Remote | null>();
    const Results: { ActionId: number; Value: unknown }[] = [];
    const TraceIds: number[] = [];
    try {
      for (const action of batch.Actions) {
        if (action.ActionType === TRACE) TraceIds.push(action.Id);
        const Value = action.ActionType === TRACE ? null : (this.act(action, batch, objects) ?? null);
        Results.push({ ActionId: action.Id, Value });
      }
      return { Results, TraceIds };
    } catch (thrown) {
      const { code = "GeneralException", message } = thrown as Refusal;
      return { Results, TraceIds, Error: { Code: code, Message: message, Location: "" } };
    }
  }

  private act(action: Action, batch: Batch, objects: Map<number, Remote | null>): unknown {
    const target = this.find(action.ObjectPathId, batch, objects);
    const { Arguments = [], ReferencedObjectPathIds: ids } = action.ArgumentInfo ?? {};
    const args = Arguments.map((given, i) => (ids?.[i] ? this.find(ids[i], batch, objects) : given));
    if (action.ActionType === INSTANTIATE) return this.introduce(target);
    // References are kept here for as long as the program lasts.
    if (action.ActionType === METHOD && /^_\w+References?$/.test(action.Name)) return null;
    if (target === null && action.ActionType === QUERY) return null;
    if (target === null) throw new Refusal("ItemNotFound", `There is nothing to ask for ${action.Name}.`);
    if (action.ActionType === QUERY) return read(target, action.QueryInfo?.Select ?? []);
    if (action.ActionType === SET) return void Reflect.set(member(target, action.Name), action.Name, args[0]);
    if (action.ActionType === METHOD) return call(target, action.Name, args);
    throw new Refusal("NotImplemented", `This program knows no action of type ${action.ActionType}.`);
  }

  private find(id: number, batch: Batch, objects: Map<number, Remote | null>): Remote | null {
    const known = objects.get(id);
    if (known !== undefined) return known;
    const { ObjectPathType: type, Name = "", ParentObjectPathId, ArgumentInfo } = batch.ObjectPaths![id]!;
    const args = ArgumentInfo?.Arguments ?? [];
    const parent = ParentObjectPathId === undefined ? null : this.find(ParentObjectPathId, batch, objects);
    const found = this.follow(type, Name, args, parent);
    objects.set(id, found);
    return found;
  }

  private follow(type: number, name: string, args: readonly unknown[], parent: Remote | null): Remote | null {
    if (type === GLOBAL || type === NEW) return this.root(name);
    if (type === REFERENCE) return this.references.get(name)!;
    if (type === NOTHING || parent === null) return null;
    if (type === INDEXER) return call(parent, "GetItem", args) as Remote;
    if (type === PROPERTY) return Reflect.get(member(parent, name), name) as Remote;
    return call(parent, name, args) as Remote | null;
  }

  /** Ranges bear a name by which a later batch asks for them. */
  private introduce(target: Remote | null): object | null {
    if (target === null) return null;
    const name = `object-${this.references.size}`;
    this.references.set(name, target);
    return { _ReferenceId: name, ...("Id" in target ? { Id: target.Id } : {}) };
  }
}

const [INSTANTIATE, QUERY, METHOD, SET, TRACE] = [1, 2, 3, 4, 5];
/** Of paths; 3 is a method. */
const [GLOBAL, NEW, PROPERTY, INDEXER, REFERENCE, NOTHING] = [1, 2, 4, 5, 6, 7];

/** What a query selects; of a collection, of each item. */
function read(target: Remote, select: readonly string[]): object {
  const items = target.Items;
  const names = select.flatMap((text) => text.split(",")).map((name) => name.trim());
  if (items) {
    const each = names.map((name) => name.replace(/^items\//i, ""));
    return { _Items: items.map((item) => ({ _Id: (item as { Id?: string }).Id, ...read(item, each) })) };
  }
  return Object.fromEntries(
    names.map((name) => {
      const [first = "", ...rest] = name.split("/");
      const wire = first[0]!.toUpperCase() + first.slice(1);
      const value: unknown = Reflect.get(member(target, wire), wire);
      return [wire, rest.length > 0 ? read(value as Remote, [rest.join("/")]) : value];
    }),
  );
}

function call(target: Remote, name: string, args: readonly unknown[]): unknown {
  return (Reflect.get(member(target, name), name) as (...given: unknown[]) => unknown).apply(target, [...args]);
}

/** A member that is not there is a call that the real program may know, and this one must learn. */
function member(target: Remote, name: string): Remote {
  if (!(name in target)) throw new Refusal("NotImplemented", `This program knows no ${name}.`);
  return target;
}
