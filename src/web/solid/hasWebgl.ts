/** Whether this browser draws in three dimensions; the trial context is given back at once. */
export function hasWebgl(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  if (context === null) return false;
  context.getExtension("WEBGL_lose_context")?.loseContext();
  return true;
}
