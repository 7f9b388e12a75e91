import { isIPv4 } from "node:net";
import type { MiddlewareHandler } from "hono";
import { Problem } from "./problem.ts";

/** Whether an address names this machine alone. */
export function isLoopback(host: string): boolean {
  return host === "localhost" || host === "::1" || (isIPv4(host) && host.startsWith("127."));
}

/**
 * Answers only questions that were sent to this machine by a loopback name, so that a page elsewhere cannot reach the
 * server by pointing its own name here; and writes only for pages that this server sent.
 */
export const guard: MiddlewareHandler = async (context, next) => {
  const host = context.req.header("host") ?? "";
  if (!isLoopback(nameOf(host))) throw new Problem("wrong_host");
  if (context.req.method !== "GET" && context.req.method !== "HEAD") {
    const origin = context.req.header("origin");
    if (origin !== undefined && origin !== `http://${host}`) throw new Problem("wrong_origin");
    const site = context.req.header("sec-fetch-site");
    if (site !== undefined && site !== "same-origin" && site !== "none") throw new Problem("wrong_origin");
  }
  await next();
};

/** Headers of every answer. Only what this server sends may run, be shown or be asked for. */
export const strictHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) context.header(name, value);
  if (context.res.headers.get("content-security-policy") === null) context.header("content-security-policy", policy());
};

/** The content policy; a page whose libraries add styles of their own names them by a nonce. */
export function policy(nonce?: string): string {
  const styles = nonce === undefined ? "'self'" : `'self' 'nonce-${nonce}'`;
  return [
    "default-src 'self'", "script-src 'self'", `style-src ${styles}`, "img-src 'self' data:", "worker-src 'self'", "connect-src 'self'",
    "object-src 'none'", "base-uri 'none'", "form-action 'none'", "frame-ancestors 'none'",
  ].join("; ");
}

const HEADERS = {
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "x-frame-options": "DENY",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
} as const;

function nameOf(host: string): string {
  if (!URL.canParse(`http://${host}`)) return "";
  return new URL(`http://${host}`).hostname.replace(/^\[(.*)\]$/, "$1");
}
