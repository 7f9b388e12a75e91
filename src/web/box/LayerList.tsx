import { type ReactElement, useEffect, useRef, useState } from "react";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { formatLength } from "../../units/format.ts";
import { useSettings } from "../state/settings.ts";
import { moveAt, putAt } from "./edits.ts";
import type { Layer, LayerStack } from "./layerStack.ts";
import { useEdit } from "./useField.ts";

interface Listed {
  /** Of the build-up. */
  readonly name: string;
  readonly stack: LayerStack;
  readonly chosen: Layer | undefined;
  readonly onChoose: (layer: Layer | undefined) => void;
  readonly onAdd: (kind: Layer["kind"]) => void;
}

/** The layers from the sheet inward, to choose, reorder, take away and add. */
export function LayerList({ name, stack, chosen, onChoose, onAdd }: Listed): ReactElement {
  const add = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLOListElement>(null);
  const [moved, setMoved] = useState<Moved>();
  // The focus goes along with the layer, to the same button; at the end of the list that one is shut, and the other takes it.
  useEffect(() => {
    if (moved === undefined) return;
    const buttons = [...(list.current?.querySelectorAll<HTMLButtonElement>(`[data-layer="${moved.key}"] [data-way]`) ?? [])].filter(({ disabled }) => !disabled);
    (buttons.find((button) => button.dataset["way"] === String(moved.by)) ?? buttons[0])?.focus();
  }, [moved]);
  const single = SINGLE.filter((kind) => !stack.layers.some((layer) => layer.kind === kind));
  const many = MANY.filter((kind) => stack.layers.filter((layer) => layer.kind === kind).length < MOST);
  return (
    <section className="field-group" aria-label={`Layers of ${name}`}>
      <div className="outline-head">
        <h3>Layers, from the sheet inward</h3>
        <MenuTrigger>
          <Button ref={add} className="button" aria-label={`Add a layer to ${name}`}>
            Add
          </Button>
          <Popover className="choose-list">
            <Menu className="choose-options" aria-label="Kinds of layer" onAction={(kind) => onAdd(kind as Layer["kind"])}>
              {[...single, ...many].map((kind) => (
                <MenuItem key={kind} id={kind} className="choose-option">
                  {NAMES[kind]}
                </MenuItem>
              ))}
            </Menu>
          </Popover>
        </MenuTrigger>
      </div>
      <ol ref={list} className="plain-list">
        {stack.layers.map((layer) => (
          <li key={layer.steps.join(".")} data-layer={layer.steps.join(".")}>
            <LayerRow
              name={name}
              layer={layer}
              alike={stack.layers.filter(({ kind }) => kind === layer.kind).length}
              isChosen={layer === chosen}
              onChoose={onChoose}
              onMoved={setMoved}
              onRemoved={() => add.current?.focus()}
            />
          </li>
        ))}
      </ol>
      {stack.layers.length === 0 ? <p className="quiet">No layers yet.</p> : null}
    </section>
  );
}

/** Where a layer went, and by which of its buttons; a new one each time. */
interface Moved {
  readonly key: string;
  readonly by: -1 | 1;
}

interface Row {
  readonly name: string;
  readonly layer: Layer;
  /** How many layers of its kind there are. */
  readonly alike: number;
  readonly isChosen: boolean;
  readonly onChoose: (layer: Layer | undefined) => void;
  readonly onMoved: (moved: Moved) => void;
  /** The row goes with the layer: the focus has to go elsewhere. */
  readonly onRemoved: () => void;
}

function LayerRow({ name, layer, alike, isChosen, onChoose, onMoved, onRemoved }: Row): ReactElement {
  const system = useSettings((settings) => settings.system);
  const edit = useEdit();
  const { kind, what, from, to, steps } = layer;
  const [field, index] = steps;
  const list = ["buildUps", name, ...(field === undefined ? [] : [field])];
  const thickness = kind === "paint" ? "" : from === undefined || to === undefined ? "not read" : formatLength(to - from, system);
  const move = (by: -1 | 1, way: string): void => {
    if (typeof index !== "number") return;
    edit(`Move ${what} ${way}`, (draft) => moveAt(draft, list, index, index + by));
    const to = [String(field), index + by];
    onChoose({ ...layer, steps: to });
    onMoved({ key: to.join("."), by });
  };
  return (
    <div className={`layer-row${isChosen ? " is-chosen" : ""}`}>
      <Button className="outline-entry" aria-expanded={isChosen} onPress={() => onChoose(isChosen ? undefined : layer)}>
        <span className={`layer-swatch stack-${kind}`} aria-hidden="true" />
        <span className="outline-name">{NAMES[kind]}</span>
        <span className="outline-more">{what}</span>
        <span className="figures layer-thickness">{thickness}</span>
      </Button>
      <div className="actions">
        {typeof index !== "number" ? null : (
          <>
            <Button className="button" data-way={-1} isDisabled={index === 0} aria-label={`Move ${what} toward the sheet`} onPress={() => move(-1, "toward the sheet")}>
              Up
            </Button>
            <Button className="button" data-way={1} isDisabled={index === alike - 1} aria-label={`Move ${what} inward`} onPress={() => move(1, "inward")}>
              Down
            </Button>
          </>
        )}
        <Button
          className="button"
          aria-label={`Remove ${what}`}
          onPress={() => {
            edit(`Remove ${what}`, (draft) => putAt(draft, ["buildUps", name, ...steps], undefined));
            onChoose(undefined);
            onRemoved();
          }}
        >
          Remove
        </Button>
      </div>
    </div>
  );
}

/** A build-up holds one of each of these. */
const SINGLE: readonly Layer["kind"][] = ["foam", "batts", "studs", "furring"];
const MANY: readonly Layer["kind"][] = ["board", "paint"];
/** As many boards or coats as the job file takes. */
const MOST = 4;

const NAMES: Readonly<Record<Layer["kind"], string>> = { foam: "Foam", batts: "Batts", studs: "Studs", furring: "Furring", board: "Board", paint: "Paint" };
