/** What plug-ins contribute. */
package culm.cli.plugins;
