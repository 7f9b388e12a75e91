import { Suspense, type ReactElement } from "react";
import { Tab, TabList, TabPanel, Tabs } from "react-aria-components";
import { Compare } from "../compare/Compare.tsx";
import { Heat } from "../heat/Heat.tsx";
import { Papers } from "../papers/Papers.tsx";
import { Unfolded } from "../unfolded/Unfolded.tsx";
import { Boundary } from "./Boundary.tsx";
import { useFrame, type View } from "./useFrame.ts";
import { useSolidView } from "./useSolidView.ts";

/** The same build, seen in several ways. */
export function Views(): ReactElement {
  const { view, show } = useFrame();
  const [Solid, fetchAgain] = useSolidView();
  return (
    <Tabs className="f-tabbed" selectedKey={view} onSelectionChange={(key) => show(key as View)}>
      <TabList className="f-tabs" aria-label="Views of the build">
        <Tab className="f-tab" id="unfolded">
          Unfolded
        </Tab>
        <Tab className="f-tab" id="solid">
          Three dimensions
        </Tab>
        <Tab className="f-tab" id="heat">
          Heat
        </Tab>
        <Tab className="f-tab" id="papers">
          Papers
        </Tab>
        <Tab className="f-tab" id="compare">
          Compare
        </Tab>
      </TabList>
      <TabPanel className="f-panel" id="unfolded">
        <Boundary what="The unfolded box">
          <Unfolded />
        </Boundary>
      </TabPanel>
      <TabPanel className="f-panel" id="solid">
        <Boundary what="The view in three dimensions" onAgain={fetchAgain}>
          <Suspense fallback={<p className="f-wait">Fetching the view in three dimensions.</p>}>
            <Solid onUnfolded={() => show("unfolded")} />
          </Suspense>
        </Boundary>
      </TabPanel>
      <TabPanel className="f-panel" id="heat">
        <Boundary what="The view of heat">
          <Heat />
        </Boundary>
      </TabPanel>
      <TabPanel className="f-panel" id="papers">
        <Boundary what="The papers">
          <Papers />
        </Boundary>
      </TabPanel>
      <TabPanel className="f-panel" id="compare">
        <Boundary what="The comparison">
          <Compare />
        </Boundary>
      </TabPanel>
    </Tabs>
  );
}
