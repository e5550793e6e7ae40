import { pumpByModel, spareBySku, sparesFor, sparesOfWork } from "../catalogue/catalogue.ts";
import type { Catalogue, Spare, SpareKind } from "../catalogue/types.ts";
import { labelTotalHp } from "../engineering/power.ts";
import { type ChangeItem, changeItems } from "../matching/parts.ts";
import type { JudgedMotor } from "../matching/types.ts";
import type { Site } from "../nameplate/vocabulary.ts";
import type { StaffMember } from "../staff.ts";

export type Need = ChangeItem["need"];

interface Edit {
  readonly by: StaffMember;
  /** ISO instant. */
  readonly at: string;
}

/** A part the rules call for, as a person wants it. */
export interface RuledEdit extends Edit {
  readonly of: "rules";
  readonly part: SpareKind;
  readonly to: Need | "dropped";
  /** The spare the list named then; null when it named none. */
  readonly sku: string | null;
}

/** A part that a person put on the list: one of the shop's spares, or one in words. */
export interface AddedPart extends Edit {
  readonly of: "desk";
  readonly part: { readonly sku: string } | { readonly words: string };
  readonly need: Need;
  /** For the desk only. */
  readonly note: string;
}

/** What a person changed of a parts list. It is laid over what the rules call for, whatever that is by then. */
export type PartEdit = RuledEdit | AddedPart;

/** A part the rules call for; `spare` is undefined where the pump is not known or the shop lists none. */
export interface RuledPart {
  readonly work: ChangeItem;
  readonly part: SpareKind;
  readonly spare: Spare | undefined;
  readonly need: Need | "dropped";
  readonly edit: RuledEdit | undefined;
}

/** `spare` is undefined for a part in words, and for a spare that the shop no longer lists. */
export interface ListedPart {
  readonly edit: AddedPart;
  readonly spare: Spare | undefined;
}

/** An edit that no longer suits what the rules call for. */
export type Unsettled =
  | { readonly why: "not-called-for"; readonly edit: RuledEdit }
  | { readonly why: "other-spare"; readonly edit: RuledEdit; readonly now: string }
  | { readonly why: "not-stocked"; readonly edit: AddedPart };

/** What goes with a motor, and what there is to do. */
export interface PartsList {
  /** Parts and jobs as the rules have them. */
  readonly items: readonly ChangeItem[];
  readonly ruled: readonly RuledPart[];
  readonly added: readonly ListedPart[];
  readonly unsettled: readonly Unsettled[];
}

/** The list for a motor (none while nothing is decided) on the customer's pump, the desk's edits laid over it. */
export function partsListOf(
  judged: JudgedMotor | undefined,
  site: Site,
  catalogue: Catalogue,
  edits: readonly PartEdit[],
): PartsList {
  const items = judged ? changeItems(judged) : [];
  const ofRules = edits.filter((edit) => edit.of === "rules");
  const ruled = items.flatMap((work) =>
    sparesOf(work, judged, site, catalogue).map(({ kind, spare }): RuledPart => {
      const edit = ofRules.find(({ part }) => part === kind);
      return { work, part: kind, spare, need: edit?.to ?? work.need, edit };
    }),
  );
  const named = new Set(ruled.flatMap(({ need, spare }) => (spare && need !== "dropped" ? spare.sku : [])));
  const added = edits
    .filter((edit) => edit.of === "desk")
    .map((edit) => ({ edit, spare: "sku" in edit.part ? spareBySku(catalogue, edit.part.sku) : undefined }))
    // What the rules have come to call for themselves is not listed twice.
    .filter(({ spare }) => spare === undefined || !named.has(spare.sku));
  return { items, ruled, added, unsettled: [...outrun(ofRules, ruled), ...gone(added)] };
}

function sparesOf(work: ChangeItem, judged: JudgedMotor | undefined, site: Site, catalogue: Catalogue) {
  const pump = site.pumpModel === undefined ? undefined : pumpByModel(catalogue, site.pumpModel);
  if (!pump) return (sparesOfWork[work.key] ?? []).map((kind) => ({ kind, spare: undefined }));
  const totalHp =
    work.key === "impeller-and-diffuser" && judged ? labelTotalHp(judged.motor.label) : undefined;
  return sparesFor(catalogue, pump, [work], totalHp);
}

function outrun(edits: readonly RuledEdit[], ruled: readonly RuledPart[]): readonly Unsettled[] {
  return edits.flatMap((edit): readonly Unsettled[] => {
    const now = ruled.find(({ part }) => part === edit.part);
    if (!now) return [{ why: "not-called-for", edit }];
    const other = edit.sku !== null && now.spare !== undefined && now.spare.sku !== edit.sku;
    return other ? [{ why: "other-spare", edit, now: now.spare.sku }] : [];
  });
}

function gone(added: readonly ListedPart[]): readonly Unsettled[] {
  return added
    .filter(({ edit, spare }) => "sku" in edit.part && spare === undefined)
    .map(({ edit }) => ({ why: "not-stocked", edit }));
}
