/** What a label needs to know of a scene. */
interface Numbered {
  readonly id: string;
  readonly number: string | null;
  readonly order: number;
}

/** A scene's short name on paper: its number, or its place in the script in parentheses when it has none. */
export function sceneLabel(scene: Numbered): string {
  return scene.number ?? `(${scene.order})`;
}

/** Short names of all scenes by their id. */
export function labelScenes(scenes: readonly Numbered[]): ReadonlyMap<string, string> {
  return new Map(scenes.map((scene) => [scene.id, sceneLabel(scene)]));
}
