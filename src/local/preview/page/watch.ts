/** Calls back for every command that changes what a workbook holds, whoever gives it. */
export function watchChanges(changed: () => void): void {
  class Watch extends o_spreadsheet.UIPlugin {
    override handle(command: Parameters<typeof o_spreadsheet.isCoreCommand>[0]): void {
      if (o_spreadsheet.isCoreCommand(command)) changed();
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add('watch_changes', Watch);
}
