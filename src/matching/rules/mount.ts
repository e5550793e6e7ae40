import { bodyOf, faceOf } from "../deduced.ts";
import { findingsOf, missing } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("mount", [
  "same",
  "same-by-letter",
  "other-body",
  "other-body-round",
  "uncommon-body",
  "other-face",
  "through-bolt",
  "face-unknown",
  "body-unknown",
  "stock-unknown",
]);

/** Will the motor bolt to the pump: same face, and a body that sits at the same height. */
export const mount: Rule = {
  name: "mount",
  weight: "deciding",
  source:
    "NEMA MG 1 Part 4 (frame numbers and letters, C face); square face of Y frames: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldFace = faceOf(nameplate);
    const newFace = faceOf(label);
    if (!newFace) return say.notKnown("stock-unknown");
    if (!oldFace) {
      return say.notKnown("face-unknown", { needs: missing(nameplate, ["frame", "flange"]) });
    }

    const inferred = oldFace.inferred || newFace.inferred;
    const faces = { oldFace: oldFace.value, newFace: newFace.value };
    if (oldFace.value !== newFace.value) {
      const throughBolt = oldFace.value === "through-bolt" || newFace.value === "through-bolt";
      return say.rulesOut(throughBolt ? "through-bolt" : "other-face", { values: faces, inferred });
    }

    const oldBody = bodyOf(nameplate);
    const newBody = bodyOf(label);
    if (newBody === undefined) return say.notKnown("stock-unknown", { inferred });
    if (oldBody === undefined) return say.notKnown("body-unknown", { needs: ["frame"], values: faces });

    const values = { ...faces, oldBody, newBody };
    if (oldBody === newBody) {
      const byLetter = oldFace.inferred && oldFace.value === "square";
      return say.holds(byLetter ? "same-by-letter" : "same", { values, inferred });
    }
    // Heights and bolt circles of other frames differ in ways that custom does not settle: the desk compares.
    if (!isUsualBody(oldBody) || !isUsualBody(newBody)) {
      return say.notKnown("uncommon-body", { values, inferred });
    }
    // 48C and 56C share the letter, not the bolt circle: 3.75 against 5.875 in (MG 1 Part 4, dimension AJ).
    const round = oldFace.value === "round";
    return say.needsWork(round ? "other-body-round" : "other-body", {
      values,
      inferred,
      work: [
        { key: "base", values: { oldBody, newBody } },
        { key: "clearance", values: { oldBody, newBody } },
        ...(round ? [{ key: "bolt-circle", values: {} }] : []),
      ],
    });
  },
};

function isUsualBody(body: number): boolean {
  return body === 48 || body === 56;
}
