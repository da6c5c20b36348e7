/** Files for other programs, through the exporters. */
package culm.cli.export;
