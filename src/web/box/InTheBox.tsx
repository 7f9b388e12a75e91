import { type ReactElement, useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { issueText } from "../../job/issue.ts";
import { useSession, type Selection } from "../state/session.ts";
import { BuildUpEditor } from "./BuildUpEditor.tsx";
import { FaceStacks, FloorStack } from "./FaceStacks.tsx";
import { FieldOf, FieldTree } from "./FieldTree.tsx";
import { placeOfIssue } from "./issuePlace.ts";
import { LeafField } from "./LeafField.tsx";
import { Outline } from "./Outline.tsx";
import { type Place, stepsOfPlace } from "./outline.ts";
import { PartView } from "./PartView.tsx";
import { placeOf, selectionAt, titleOf } from "./place.ts";
import { ThingEditor } from "./ThingEditor.tsx";
import "../controls/controls.css";
import "./box.css";

/** What is in the box: the outline of the job, and the form of what is chosen in it or on a drawing. */
export function InTheBox(): ReactElement {
  const selection = useSession((session) => session.selection);
  const select = useSession((session) => session.select);
  const [own, setOwn] = useState<Own>();
  const back = useRef<HTMLButtonElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  // What is gone to here takes the focus along; what is picked on a drawing leaves it there.
  useEffect(() => {
    if (own !== undefined) (own.place === undefined ? head : back).current?.focus();
  }, [own]);
  const isOwn = own !== undefined && (own.selection === selection || selection?.kind === "finding");
  const place = isOwn ? own.place : placeOf(selection);
  const go = (to: Place | undefined): void => {
    const selected = to === undefined ? undefined : selectionAt(to);
    setOwn({ place: to, selection: selected });
    select(selected);
  };
  const partId = !isOwn && selection?.kind === "part" ? selection.id : undefined;
  const title = partId === undefined ? (place === undefined ? undefined : titleOf(place)) : `Part ${partId}`;
  return (
    <div className="in-the-box">
      <IssueList onGo={go} />
      {title === undefined ? (
        <>
          <h2 ref={head} tabIndex={-1}>
            In the box
          </h2>
          <Outline onGo={go} />
        </>
      ) : (
        <div className="form">
          <header className="form-head">
            <Button ref={back} className="button" aria-label="All in the box" onPress={() => go(undefined)}>
              All
            </Button>
            <h2>{title}</h2>
          </header>
          {partId === undefined ? place === undefined ? null : <Form key={JSON.stringify(place)} place={place} onGo={go} /> : <PartView id={partId} />}
        </div>
      )}
    </div>
  );
}

/** A place gone to here, with the selection that it made: another selection leads away from it. */
interface Own {
  readonly place: Place | undefined;
  readonly selection: Selection | undefined;
}

function Form({ place, onGo }: { readonly place: Place; readonly onGo: (to: Place | undefined) => void }): ReactElement {
  const file = useSession((session) => session.file);
  const steps = stepsOfPlace(file, place);
  if (steps === undefined) return <p className="quiet">It is not in the job any more.</p>;
  switch (place.kind) {
    case "build-up":
      return <BuildUpEditor name={place.id} onGo={onGo} />;
    case "face":
      return (
        <>
          <FaceStacks face={place.id} />
          <FieldTree steps={steps} />
          {place.id === "roof" ? <LeafField steps={["ceilingFirst"]} /> : null}
        </>
      );
    case "fields":
      return (
        <>
          {place.field === "floor" ? <FloorStack /> : null}
          <FieldOf steps={steps} />
          {place.field === "job" ? <LeafField steps={["units"]} /> : null}
        </>
      );
    case "opening":
    case "item":
    case "partition":
    case "room":
      return <ThingEditor kind={place.kind} id={place.id} steps={steps} onGo={onGo} />;
  }
}

/** What keeps the file from being read; the last good answer stays on the screen meanwhile. */
function IssueList({ onGo }: { readonly onGo: (to: Place) => void }): ReactElement | null {
  const issues = useSession((session) => session.issues);
  const file = useSession((session) => session.file);
  if (issues.length === 0) return null;
  return (
    <section className="alert" aria-label="Issues">
      <p role="status">
        {issues.length === 1 ? "One issue keeps" : `${issues.length} issues keep`} the job from being worked out. The last answer stays until mended.
      </p>
      <ul className="plain-list">
        {issues.map((issue) => {
          const place = placeOfIssue(file, issue.path);
          const text = issueText(issue);
          return (
            <li key={text}>
              {place === undefined ? (
                text
              ) : (
                <Button className="issue-link" onPress={() => onGo(place)}>
                  {text}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
