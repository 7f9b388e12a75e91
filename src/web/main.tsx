import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { I18nProvider } from "react-aria-components";
import { App } from "./App.tsx";
import { Boundary } from "./frame/Boundary.tsx";
import "./style/base.css";

const root = document.getElementById("app");
if (root === null) throw new Error("the page has no place for the app");

// The app speaks English, whatever the browser says it speaks: some browsers name locales that no library knows.
createRoot(root).render(
  <StrictMode>
    <I18nProvider locale="en-US">
      <Boundary what="The window">
        <App />
      </Boundary>
    </I18nProvider>
  </StrictMode>,
);
