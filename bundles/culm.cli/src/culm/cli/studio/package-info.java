/** Work on a studio: its parts, and designs compared. */
package culm.cli.studio;
