import type { ActionName } from '../appsscript/actions.ts';
import { menuName } from '../appsscript/menu.ts';

const homeCard: ActionName = 'homeCard';

/**
 * The manifest with the `addOns` part of a Google Workspace add-on, by which its icon beside the sheet opens a card
 * (Google's reference of the manifest's add-on resource, read in a stored copy; name and picture are required).
 * @param logoUrl address of the add-on's picture
 */
export function withAddOns(manifest: string, logoUrl: string): string {
  const addOns = {
    common: { name: menuName, logoUrl },
    sheets: { homepageTrigger: { runFunction: homeCard } },
  };
  return `${JSON.stringify({ ...(JSON.parse(manifest) as object), addOns }, null, 2)}\n`;
}
