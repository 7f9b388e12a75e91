import type { ReactElement } from "react";
import { Button, CheckboxButton, CheckboxField, CheckboxGroup, Dialog, DialogTrigger, Label, Popover } from "react-aria-components";
import { LAYER_NAMES, LAYERS, useSettings, type LayerId } from "../state/settings.ts";

/** Which layers are drawn: those that this build has. */
export function LayerSwitches({ present }: { readonly present: ReadonlySet<LayerId> }): ReactElement {
  const { layers, showLayer } = useSettings();
  const listed = LAYERS.filter((layer) => present.has(layer));
  return (
    <DialogTrigger>
      <Button className="button">Layers</Button>
      <Popover className="u-popover" placement="bottom end">
        <Dialog className="u-layers" aria-label="Layers">
          <CheckboxGroup
            value={listed.filter((layer) => layers[layer])}
            onChange={(shown) => {
              for (const layer of listed) if (shown.includes(layer) !== layers[layer]) showLayer(layer, shown.includes(layer));
            }}
          >
            <Label className="only-heard">Layers shown</Label>
            {listed.map((layer) => (
              <CheckboxField key={layer} value={layer}>
                <CheckboxButton className="u-switch">
                  <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
                    <rect className={`u-key is-${layer.startsWith("board") ? "board" : layer}`} x="1" y="1" width="14" height="14" />
                    {layers[layer] && <path className="u-tick" d="M3.5 8.5 7 12l5.5-8" />}
                  </svg>
                  {LAYER_NAMES[layer]}
                </CheckboxButton>
              </CheckboxField>
            ))}
          </CheckboxGroup>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
