import type { ReactElement } from "react";
import { isObject, type JsonValue, valueAt } from "../../job/file.ts";
import { formatLength } from "../../units/format.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { wordsFor } from "./fieldWords.ts";
import { layerStackOf } from "./layerStack.ts";
import { StackDrawing } from "./StackDrawing.tsx";

/** The build-ups on a face cut through: what stands on it, and at the door end what the cargo door leaves carry. */
export function FaceStacks({ face }: { readonly face: string }): ReactElement {
  return (
    <>
      {FIELDS.map((field) => (
        <NamedStack key={field} face={face} field={field} />
      ))}
    </>
  );
}

const FIELDS = ["leafLining", "buildUp"] as const;

function NamedStack({ face, field }: { readonly face: string; readonly field: (typeof FIELDS)[number] }): ReactElement | null {
  const named = useSession((session) => valueAt(session.file, ["faces", face, field]));
  const buildUp = useSession((session) => (typeof named === "string" ? valueAt(session.file, ["buildUps", named]) : undefined));
  const profile = useSession((session) => session.screen?.build.surfaces.find(({ id }) => id === face)?.profile);
  if (typeof named !== "string" || buildUp === undefined) return null;
  return <Cut what={`${wordsFor(`faces.${face}.${field}`).name}: ${named}`} layers={buildUp} profile={field === "buildUp" ? profile : undefined} />;
}

/** The layers on the bare floor, cut through; foam sprayed from below is not among them. */
export function FloorStack(): ReactElement | null {
  const floor = useSession((session) => session.file["floor"]);
  const layers = isObject(floor) ? floor["layers"] : undefined;
  return layers === undefined ? null : <Cut what="Layers on the bare floor" layers={{ boards: layers }} profile={undefined} />;
}

interface Shown {
  readonly what: string;
  readonly layers: JsonValue;
  readonly profile: Parameters<typeof StackDrawing>[0]["profile"];
}

function Cut({ what, layers, profile }: Shown): ReactElement | null {
  const system = useSettings((settings) => settings.system);
  const stack = layerStackOf(layers);
  if (stack.layers.length === 0) return null;
  const total = stack.total === undefined ? "a thickness cannot be read" : `${formatLength(stack.total, system)} deep`;
  return (
    <figure className="stack-figure">
      <StackDrawing stack={stack} profile={profile} name={`${what}, cut through: ${stack.layers.map((layer) => layer.what).join("; ")}. ${total}.`} />
      <figcaption className="quiet">
        {what}, <span className="figures">{total}</span>
      </figcaption>
    </figure>
  );
}
