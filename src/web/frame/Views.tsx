import { lazy, Suspense, useState, type ReactElement } from "react";
import { Tab, TabList, TabPanel, Tabs, type Key } from "react-aria-components";
import { Compare } from "../compare/Compare.tsx";
import { Papers } from "../papers/Papers.tsx";
import { Unfolded } from "../unfolded/Unfolded.tsx";

/** Fetched when it is first looked at: it is as large as all the rest. */
const Solid = lazy(async () => ({ default: (await import("../solid/Solid.tsx")).Solid }));

/** The same build, seen in several ways. */
export function Views(): ReactElement {
  const [view, setView] = useState<Key>("unfolded");
  return (
    <Tabs className="f-tabbed" selectedKey={view} onSelectionChange={setView}>
      <TabList className="f-tabs" aria-label="Views of the build">
        <Tab className="f-tab" id="unfolded">
          Unfolded
        </Tab>
        <Tab className="f-tab" id="solid">
          Three dimensions
        </Tab>
        <Tab className="f-tab" id="papers">
          Papers
        </Tab>
        <Tab className="f-tab" id="compare">
          Compare
        </Tab>
      </TabList>
      <TabPanel className="f-panel" id="unfolded">
        <Unfolded />
      </TabPanel>
      <TabPanel className="f-panel" id="solid">
        <Suspense fallback={<p className="f-wait">Fetching the view in three dimensions.</p>}>
          <Solid onUnfolded={() => setView("unfolded")} />
        </Suspense>
      </TabPanel>
      <TabPanel className="f-panel" id="papers">
        <Papers />
      </TabPanel>
      <TabPanel className="f-panel" id="compare">
        <Compare />
      </TabPanel>
    </Tabs>
  );
}
