import { ThemeIcon, type TreeDataProvider } from "vscode";
import type { DrawnItem, DrawnTree } from "../testing-api.ts";

/** Reads a tree as the editor draws it. */
export function drawnTree<Element>(provider: TreeDataProvider<Element>): DrawnTree {
  const elements = new WeakMap<DrawnItem, Element>();
  return {
    elementOf: (item) => elements.get(item),
    children: async (of) => {
      const children = (await provider.getChildren(of && elements.get(of))) ?? [];
      return Promise.all(
        children.map(async (element) => {
          const item = await provider.getTreeItem(element);
          const label = typeof item.label === "string" ? item.label : (item.label?.label ?? "");
          const drawn: DrawnItem = {
            label,
            description: String(item.description ?? ""),
            icon: item.iconPath instanceof ThemeIcon ? item.iconPath.id : "",
            kind: item.contextValue ?? "",
            spoken: item.accessibilityInformation?.label ?? label,
          };
          elements.set(drawn, element);
          return drawn;
        }),
      );
    },
  };
}
